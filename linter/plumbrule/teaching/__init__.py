"""Rules proved on their own examples, and explained by them."""
