"""Words that people write by habit and that leave something open, with the question to ask back."""

from __future__ import annotations

from typing import Annotated

from plumbrule.plan import words
from plumbrule.reading.model import WordHints

_FIR = "Which? douglas fir-larch, hem-fir, spruce-pine-fir … If the stamp cannot be read, write unknown."
_STAMP = "Write the species group on the stamp. If it cannot be read, write unknown."
_MARK = "Write the grade on the mill mark, like A36. If there is none, write unmarked: it counts as the weakest."
_OAK = "red oak or white oak?"
_MAPLE = "hard maple, soft maple or silver maple?"
_MASK = "dust respirator or vapour respirator?"
_GLOVES = "chemical gloves, work gloves or cut-resistant gloves?"
_GLOSS = "Which gloss? flat paint, eggshell paint, satin paint, semi-gloss paint or gloss paint?"
_POLYURETHANE = "oil polyurethane, waterborne polyurethane or two-part polyurethane?"

_FRAMING = {"fir": _FIR, "wood": _STAMP, "softwood": _STAMP, "lumber": _STAMP, "whitewood": _STAMP,
            "pine": "southern pine, ponderosa pine, red pine …? " + _STAMP,
            "spruce": "spruce-pine-fir, eastern spruce …? " + _STAMP, "oak": _OAK,
            "cedar": "western cedars, northern white cedar, alaska cedar …? " + _STAMP}  # fmt: skip
_BOARD = {"oak": _OAK, "maple": _MAPLE, "ash": "white ash or black ash?",
          "birch": "yellow birch, paper birch or sweet birch?",
          "cherry": "black cherry is the American one: write it, or the species it is.",
          "walnut": "black walnut is the American one: write it, or the species it is.",
          "mahogany": "true mahogany or african mahogany?", "redwood": "old-growth redwood or young-growth redwood?",
          "cedar": "western redcedar, eastern redcedar, northern white-cedar, alaska cedar …?",
          "pine": "eastern white pine, ponderosa pine, red pine, sugar pine …?",
          "fir": "coast douglas-fir, white fir, grand fir …?", "spruce": "sitka spruce, white spruce, red spruce …?",
          "elm": "american elm is the only one known here.", "alder": "red alder is the only one known here.",
          "hardwood": "white ash, red oak, hard maple …?", "softwood": "eastern white pine, sitka spruce …?",
          }  # fmt: skip

FramingSpecies = Annotated[words.FramingSpecies, WordHints(_FRAMING)]
BoardSpecies = Annotated[words.BoardSpecies, WordHints(_BOARD)]
WoodSpecies = Annotated[
    words.WoodSpecies,
    WordHints({word: answer for word, answer in {**_BOARD, **_FRAMING}.items() if word not in words.WOOD_SPECIES}),
]
Steel = Annotated[
    words.Steel,
    WordHints({"mild steel": _MARK, "steel": _MARK, "hot rolled": _MARK, "hot-rolled": _MARK, "unknown": _MARK,
               "stainless": "304 stainless is the only one known here.",
               "aluminium": "6061-T6 or 6063-T5?", "aluminum": "6061-T6 or 6063-T5?"}, noun="steel grade"),
]  # fmt: skip
ScrewKind = Annotated[
    words.ScrewKind,
    WordHints({"screw": "wood screw, lag screw, structural screw, deck screw …?",
               "lag": "Write lag screw.", "lag bolt": "Write lag screw.", "coach screw": "Write lag screw.",
               "anchor": "masonry anchor or hollow-wall anchor?", "plug": "masonry anchor or hollow-wall anchor?",
               "bolt": "hanger bolt, machine screw or lag screw?", "timber screw": "structural screw or wood screw?",
               "toggle bolt": "Write toggle."}, noun="kind of screw"),
]  # fmt: skip
Head = Annotated[
    words.Head, WordHints({"countersunk": "flat, oval, bugle or trim?", "dome": "round, pan or truss?"})
]  # fmt: skip
Wear = Annotated[
    words.Wear,
    WordHints({"mask": _MASK, "respirator": _MASK, "dust mask": "Write dust respirator: N95, P100, FFP2 or FFP3.",
               "gloves": _GLOVES, "glasses": "safety glasses or splash goggles?",
               "goggles": "safety glasses or splash goggles?", "ear plugs": "Write ear protection.",
               "earmuffs": "Write ear protection."}),
]  # fmt: skip
Tester = Annotated[
    words.Tester,
    WordHints({"tester": "two-pole contact tester, multimeter, non-contact pen or plug-in tester?",
               "voltage tester": "two-pole contact tester or non-contact pen?"}),
]  # fmt: skip
Coating = Annotated[words.Coating, WordHints({"paint": _GLOSS, "emulsion": _GLOSS, "latex paint": _GLOSS})]
Lining = Annotated[
    words.Lining,
    WordHints({"drywall": "Write gypsum board.", "plasterboard": "Write gypsum board.",
               "plaster": "plaster on wood lath, plaster on metal lath or gypsum plaster on brick?",
               "lath and plaster": "plaster on wood lath or plaster on metal lath?"}, noun="lining"),
]  # fmt: skip
Finish = Annotated[
    words.Finish,
    WordHints({"polyurethane": _POLYURETHANE, "poly": _POLYURETHANE, "varnish": "oil varnish or wiping varnish?",
               "oil": "linseed oil, tung oil, oil-varnish blend, hard-wax oil or mineral oil?",
               "epoxy": "Write clear epoxy.", "danish oil": "Write oil-varnish blend."}, noun="finish"),
]  # fmt: skip
PanelCore = Annotated[
    words.PanelCore,
    WordHints({"PVC": "foamed PVC or solid PVC?", "vinyl": "foamed PVC or solid PVC?",
               "foam": "foamed PVC, polystyrene foam or polyethylene foam?", "felt": "Write PET felt."}),
]  # fmt: skip
Adhesive = Annotated[
    words.Adhesive,
    WordHints({"tape": "acrylic foam tape or rubber tape?", "peel and stick": "acrylic foam tape or rubber tape?",
               "glue": "construction adhesive, contact adhesive, mastic or water-based panel adhesive?"}),
]  # fmt: skip
Sealant = Annotated[
    words.Sealant,
    WordHints({"caulk": "acrylic latex, siliconised acrylic latex or silicone?",
               "latex": "acrylic latex or siliconised acrylic latex?"}),
]  # fmt: skip
BoxHolds = Annotated[words.BoxHolds, WordHints({"outlet": "Write receptacle.", "socket": "Write receptacle."})]
Task = Annotated[
    words.Task,
    WordHints({"sand wall": "Did you mean abrade wall or sand board?", "sand": "sand board or abrade wall?",
               "paint": "paint wall, coat steel or finish board?",
               "clean": "wash wall, rinse wall, dust off wall or wipe wall?",
               "drill": "drill steel or drill pilot holes?", "measure": "Write measure room."}, noun="task"),
]  # fmt: skip
