"""What follows from a plan: one row a stud, screw, hole, angle, with how each figure came about."""
