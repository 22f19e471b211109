"""Every fault that a file can have, each in a file with nothing else wrong."""

import re
from pathlib import Path

import pytest
from load.files import MARK, file_with, split_mark
from load.test_slips import SLIPS, written

import seqplan.load
from seqplan.base.diagnostic import Severity
from seqplan.load.document import load_text
from seqplan.words import faults

_LOOK = "operations: {look: {do: x}}\n"
_CHOICES = "choices: {view: [plain, lined]}"

# Slug, and the file with a mark before the place.
ERRORS: tuple[tuple[str, str], ...] = (
    # the text
    ("control-character", "garment: Pier¶\x07 apron\n"),
    ("control-character", 'garment: ¶"Pier\\u2028 apron"\noperations: {a: {do: x}}\n'),
    ("tab", "garment: Pier apron\noperations:\n¶\tlook: {do: x}\n"),
    ("tab", "garment: Pier apron\noperations:\n  look: {do: x}\n¶\tcut: {do: y}\n"),
    ("stray-colon", "garment: ¶Pier: apron\n" + _LOOK),
    ("unclosed-list", "garment: A\nnot shown: [press, finish¶\noperations: {a: {do: x}}\n"),
    ("unclosed-braces", "garment: Pier apron\noperations:\n  look: {do: x¶ note: y}\n"),
    ("unclosed-quote", "garment: ¶'Pier apron\n" + _LOOK),
    ("unknown-escape", 'garment: "Pier ¶\\q apron"\n'),
    ("missing-colon", "garment: Pier apron\nunits¶ cm\n" + _LOOK),
    ("uneven-indent", "garment: A\noperations:\n    ¶look: {do: x}\n  cut: {do: y}\n"),
    ("stray-character", "garment: ¶@pier\n"),
    ("unreadable-text", "garment: ¶]\n"),
    # the tree
    ("anchor", "garment: ¶&name Pier apron\noperations: {a: {do: x}}\n"),
    ("alias", "garment: ¶*name\noperations: {a: {do: x}}\n"),
    ("merge-key", "garment: Pier apron\noperations: {a: {do: x, ¶<<: {foot: zip}}}\n"),
    ("tag", "garment: ¶!!str Pier apron\noperations: {a: {do: x}}\n"),
    ("second-document", "garment: Pier apron\noperations: {a: {do: x}}\n¶---\ngarment: Other\n"),
    ("too-deep", "operations: " + "[" * 49 + "¶[" + "]" * 50 + "\n"),
    ("key-not-text", "garment: Pier apron\noperations: {a: {do: x}}\n? ¶[a]\n: b\n"),
    ("duplicate-key", file_with(operation="¶look: {do: Look again}")),
    ("duplicate-key", file_with(operation="press: {press: front.hem, note: a, ¶note: b}")),
    # the top
    ("empty-file", "¶"),
    ("empty-file", "¶# nothing but a remark\n"),
    ("wrong-type", "¶- garment\n- Pier apron\n"),
    ("wrong-type", "¶Pier apron\n"),
    ("missing-key", "¶garment: Pier apron\n"),
    ("missing-key", "¶operations: {look: {do: Look}}\n"),
    ("unknown-key", file_with(top="¶abuot: An apron")),
    ("empty-value", file_with(top="about:¶")),
    ("empty-value", file_with(top='about: ¶"  "')),
    ("wrong-type", file_with(top="about: ¶[an, apron]")),
    ("unknown-choice", file_with(top="units: ¶ells")),
    ("unknown-choice", file_with(top="wearer: ¶[child]")),
    ("unknown-choice", file_with(top="not shown: [press, ¶hem]")),
    ("empty-list", file_with(top="not shown: ¶[]")),
    ("empty-value", file_with(top="not shown: [press, ¶'']")),
    ("unreadable-length", file_with(top="allowance: ¶a bit")),
    ("unreadable-length", file_with(top="allowance: ¶-1")),
    ("unreadable-length", file_with(top="allowance: ¶{cm: 1.5, mm: 15}")),
    ("unreadable-length", file_with(top="allowance: ¶3/0 in")),
    ("long-length", file_with(top="allowance: ¶1001 m")),
    ("empty-section", "garment: Pier apron\n¶pieces:\noperations: {a: {do: x}}\n"),
    ("empty-section", "garment: Pier apron\n¶operations: {}\n"),
    ("wrong-type", "garment: Pier apron\noperations: ¶[a, b]\n"),
    ("wrong-type", "garment: Pier apron\noperations: ¶sew it\n"),
    # names
    ("bad-name", file_with(piece="¶side panel: {cut: 2}")),
    ("bad-name", file_with(operation="¶sew/press: {do: x}")),
    ("bad-name", file_with(operation="¶-: {do: x}")),
    ("bad-name", file_with(piece="flap: {edges: [top, ¶left.side]}")),
    ("long-name", file_with(operation="¶" + "a" * 65 + ": {do: x}")),
    ("hidden-direction", file_with(operation="¶ab\u202ecd: {do: x}")),
    ("reserved-name", file_with(piece="¶all: {cut: 2}")),
    # fabrics, notions, stations
    ("wrong-type", file_with(fabric="net: ¶[light]")),
    ("empty-value", file_with(fabric="net:¶")),
    ("unknown-key", file_with(fabric="net: {kind: knit, ¶wieght: light}")),
    ("missing-key", file_with(notion="¶cord: {length: 120}")),
    ("unreadable-number", file_with(notion="buttons: {kind: button, count: ¶0}")),
    ("unreadable-number", file_with(notion="buttons: {kind: button, count: ¶six}")),
    ("unreadable-number", file_with(station="hand: {minutes: ¶1441}")),
    ("unreadable-number", file_with(station="hand: {foot minutes: ¶[1]}")),
    ("station-without-title", file_with(station="¶eyelets: {minutes: 2}")),
    ("unreadable-mark", file_with(station="hand: {mark: ¶Hand}")),
    ("wrong-type", file_with(station="hand: ¶two minutes")),
    # pieces
    ("wrong-type", file_with(piece="flap: ¶canvas")),
    ("unknown-key", file_with(piece="flap: {¶colour: blue}")),
    ("unknown-fabric", file_with(piece="flap: {of: ¶canvass}")),
    ("unreadable-cut", file_with(piece="flap: {cut: ¶100}")),
    ("unreadable-cut", file_with(piece="flap: {cut: ¶2 fold}")),
    ("unreadable-cut", file_with(piece="flap: {cut: ¶[2]}")),
    ("bar-without-edge", file_with(piece="flap: {edges: [¶top |]}")),
    ("too-many-edges", file_with(piece=f"flap: {{edges: ¶[{', '.join(['rim'] * 201)}]}}")),
    ("too-many-edges", file_with(piece=f"flap: {{edges: ¶[{' | '.join(['rim'] * 201)}]}}")),
    ("wrong-type", file_with(piece="flap: {edges: [top, ¶[side]]}")),
    ("unknown-piece", file_with(piece="flap: {like: ¶pockett}")),
    ("edges-twice", file_with(piece="flap: {like: pocket, edges: ¶[top]}")),
    ("edges-twice", file_with(piece="flap: {edges: [top], strip: ¶[attach, fold]}")),
    ("edges-twice", file_with(piece="flap: {like: sleeve, slits: ¶{slit: {at: in | out}}}")),
    ("like-itself", file_with(piece="flap: {like: ¶flap}")),
    ("like-circle", file_with(piece="flap: {like: ¶tab}\n  tab: {like: flap}")),
    ("unknown-choice", file_with(piece="flap: {layer: ¶padding}")),
    ("unknown-choice", file_with(piece="flap: {worn: ¶sideways}")),
    ("unknown-edge", file_with(piece="flap: {edges: [top, side], selvage: [top, ¶sid]}")),
    ("strip-without-fold", file_with(piece="flap: {strip: ¶[attach, end, foild, end]}")),
    ("strip-without-fold", file_with(piece="flap: {strip: ¶[attach, fold, end, fold]}")),
    ("reserved-name", file_with(fabric="¶all: woven")),
    # what a piece bears
    ("unknown-edge", file_with(piece="flap: {edges: [waist], darts: [¶waits]}")),
    ("unknown-edge", file_with(piece="flap: {like: front, pleats: {on: ¶waits, number: 2}}")),
    ("unknown-edge", file_with(piece="flap: {darts: ¶waist}")),
    ("unreadable-number", file_with(piece="flap: {edges: [a], darts: {on: a, number: ¶0}}")),
    ("missing-key", file_with(piece="flap: {edges: [a], darts: ¶{number: 2}}")),
    ("wrong-type", file_with(piece="flap: {edges: [a], darts: ¶{a: 2}}")),
    ("wrong-type", file_with(piece="flap: {edges: [a, b], slits: {v: ¶{between: a | b}}}")),
    ("unreadable-slit", file_with(piece="flap: {edges: [a, b], slits: {v: {at: ¶[a, b]}}}")),
    ("edge-alone", file_with(piece="flap: {edges: [a], darts: ¶flap.a}")),
    ("edge-alone", file_with(piece="flap: {edges: [a, b], selvage: [a, ¶flap.b]}")),
    ("edge-alone", file_with(operation="x: {patch pocket: pocket, at: back, open: ¶pocket.foot}")),
    ("edges-twice", file_with(piece="flap: {edges: [a], strip: ¶yes}")),
    ("wrong-type", file_with(piece="flap: {edges: [a], darts: [¶[a]]}")),
    ("empty-list", file_with(piece="flap: {edges: [a], darts: ¶[]}")),
    ("unknown-side", file_with(piece="flap: {cut: pair, worn: back, spots: ¶tab@lft}")),
    ("no-sides", file_with(piece="flap: {spots: [tab, ¶dot@left]}")),
    ("sides-unknown", file_with(piece="flap: {cut: pair, spots: ¶dot@left}")),
    ("name-of-edge", file_with(piece="flap: {edges: [a, b], spots: ¶b}")),
    ("name-of-edge", file_with(piece="flap: {like: front, lines: [roll, ¶hem]}")),
    ("bad-name", file_with(piece="flap: {lines: ¶roll line}")),
    ("name-of-edge", file_with(piece="flap: {edges: [a, b], slits: {¶a: {at: a | b}}}")),
    ("bad-name", file_with(piece="flap: {edges: [a, b], slits: {¶a slit: {at: a | b}}}")),
    ("slit-nowhere", file_with(piece="flap: {edges: [a, b, c], slits: {v: {at: ¶b | a}}}")),
    ("slit-nowhere", file_with(piece="flap: {cut: fold, edges: [a, b], slits: {v: {at: ¶b | a}}}")),
    ("unknown-edge", file_with(piece="flap: {edges: [a, b], slits: {v: {at: ¶a | d}}}")),
    ("unknown-edge", file_with(piece="flap: {edges: [a, b], slits: {v: {at: ¶fold | a}}}")),
    ("unknown-edge", file_with(piece="flap: {slits: {v: {at: ¶a | a}}}")),
    ("unreadable-slit", file_with(piece="flap: {edges: [a, b], slits: {v: {at: ¶a}}}")),
    ("unreadable-slit", file_with(piece="flap: {edges: [a, b], slits: {v: {at: ¶a | b | a}}}")),
    ("missing-key", file_with(piece="flap: {edges: [a, b], slits: {¶v: {length: 2}}}")),
    ("wrong-type", file_with(piece="flap: {edges: [a, b], slits: ¶[v]}")),
    ("wrong-type", file_with(piece="flap: {edges: [a, b], slits: ¶{}}")),
    ("wrong-type", file_with(piece="flap: {edges: [a, b], slits: {v: ¶a | b}}")),
    # choices, recipes, sizes, waivers
    ("one-option", file_with(top="choices: {¶view: plain}")),
    ("empty-section", file_with(top="¶choices:")),
    ("empty-list", file_with(top="choices: {view: ¶[]}")),
    ("long-name", file_with(top=f"choices: {{view: [plain, ¶{'a' * 65}]}}")),
    ("hidden-direction", file_with(top="choices: {view: [plain, ¶li\u202ened]}")),
    ("bad-name", file_with(top="choices: {¶the view: [plain, lined]}")),
    ("unknown-choice-name", file_with(top=_CHOICES, piece="flap: {when: {¶veiw: plain}}")),
    ("unknown-choice-name", file_with(operation="x: {do: A, when: {¶view: plain}}")),
    ("unknown-option", file_with(top=_CHOICES, notion="cord: {kind: cord, when: {view: ¶plian}}")),
    ("unknown-option", file_with(top=_CHOICES, operation="x: {do: A, when: {view: [plain, ¶x]}}")),
    ("empty-value", file_with(top=_CHOICES, operation="x: {do: A, when: {view: ¶''}}")),
    ("wrong-type", file_with(top=_CHOICES, operation="x: {do: A, when: ¶plain}")),
    ("wrong-type", file_with(top=_CHOICES, operation="x: {do: A, when: ¶{}}")),
    (
        "duplicate-key",
        file_with(top=_CHOICES, operation="x: {do: A, when: {view: plain, ¶view: lined}}"),
    ),
    ("recipe-without-sew", file_with(top="recipes: {¶house seam: [press, finish]}")),
    ("unknown-seam-part", file_with(top="recipes: {house seam: [sew, ¶prses]}")),
    ("unknown-seam-part", file_with(top="recipes: {house seam: [¶sow, press]}")),
    ("usual-seam", file_with(top="recipes: {¶french: [sew, press]}")),
    ("hidden-direction", file_with(top="recipes: {¶hou\u202ese: [sew, press]}")),
    ("duplicate-key", file_with(top="recipes: {house seam: sew, ¶house  seam: sew}")),
    ("bad-name", file_with(top="recipes: {¶'': sew}")),
    (
        "unknown-choice",
        file_with(top="recipes: {house: sew}", operation="x: {sew: back.centre, as: ¶huose}"),
    ),
    ("wrong-type", file_with(top="recipes: ¶[sew]", operation="x: {sew: back.centre, as: own}")),
    ("wrong-type", file_with(top="sizes: [S, ¶{M: 1}]", notion="t: {kind: tape, length: {M: 2}}")),
    ("unknown-size", file_with(top="sizes: [S, M]", notion="t: {kind: a, length: {S: 1, ¶N: 2}}")),
    ("unknown-size", file_with(notion="t: {kind: tape, length: {¶S: 1}}")),
    ("size-missing", file_with(top="sizes: [S, M]", notion="t: {kind: tape, length: ¶{S: 1}}")),
    ("unreadable-length", file_with(top="sizes: [S, M]", notion="t: {kind: tape, length: ¶{}}")),
    (
        "unreadable-length",
        file_with(top="sizes: [S, M]", notion="t: {kind: tape, length: {S: ¶long, M: 2}}"),
    ),
    ("wrong-type", file_with(top="waive: ¶press-before-crossing")),
    ("missing-key", file_with(top="waive: [¶{rule: press-before-crossing}]")),
    ("wrong-type", file_with(top="waive: ¶{press-before-crossing: no}")),
    ("sizes-in-a-row", file_with(top="sizes: ¶S, M", notion="t: {kind: a, length: {S: 1}}")),
    ("unknown-operation", file_with(top="waive: {rule: a-rule, because: so, at: [look, ¶lok]}")),
    ("empty-list", file_with(top="waive: ¶[]")),
    # references
    ("edge-wanted", file_with(operation="x: {hem: ¶front}")),
    ("edge-wanted", file_with(operation="x: {hem: ¶nothing}")),
    ("unreadable-edge", file_with(operation="x: {hem: ¶front.}")),
    ("unreadable-edge", file_with(operation="x: {hem: ¶front.a.b}")),
    ("wrong-type", file_with(operation="x: {hem: ¶{front: hem}}")),
    ("empty-list", file_with(operation="x: {hem: ¶[]}")),
    ("unknown-piece", file_with(operation="x: {hem: ¶fornt.hem}")),
    ("unknown-edge", file_with(operation="x: {hem: ¶front.hme}")),
    ("unknown-edge", file_with(operation="x: {hem: ¶patch.side}")),
    ("unknown-side", file_with(operation="x: {hem: ¶front.hem@up}")),
    ("no-sides", file_with(operation="x: {hem: ¶strap.end@left}")),
    ("sides-unknown", file_with(operation="x: {hem: ¶lining.hem@left}")),
    ("same-edge-twice", file_with(operation="x: {hem: [front.hem, back.hem, ¶front.hem]}")),
    ("same-edge-twice", file_with(operation="x: {hem: [front.hem, ¶front.hem@left]}")),
    ("piece-wanted", file_with(operation="x: {turn: ¶front.hem}")),
    ("unknown-piece", file_with(operation="x: {turn: [front, ¶bakc]}")),
    ("unknown-fabric", file_with(operation="x: {fuse: front, with: ¶fusable}")),
    ("unknown-thing", file_with(operation="x: {attach: ¶button, at: front.hem}")),
    ("unknown-fabric", file_with(operation="x: {pretreat: [canvas, ¶linnen]}")),
    ("half-wanted", file_with(operation="x: {fuse: ¶cuff hlaf, with: fusible}")),
    ("half-wanted", file_with(operation="x: {fuse: [front, ¶cuff hlaf]}")),
    ("half-wanted", file_with(operation="x: {fuse: ¶all half}")),
    ("unknown-piece", file_with(operation="x: {fuse: ¶cufff half}")),
    ("plus-without-piece", file_with(operation="x: {hold: front.waist, with: ¶lining +}")),
    ("plus-without-piece", file_with(operation="x: {turn: [front, ¶+ back]}")),
    ("unknown-piece", file_with(operation="x: {turn: ¶front + bakc}")),
    ("unknown-side", file_with(operation="x: {buttonhole: ¶cuff@lft}")),
    ("unknown-spot", file_with(operation="x: {buttonhole: ¶cuff.tba}")),
    ("wrong-type", file_with(piece="flap: {edges: [top, foot], lines: frill, begins: ¶2}")),
    ("wrong-type", file_with(piece="flap: {edges: [top, foot], lines: frill, begins: ¶{}}")),
    (
        "unreadable-part",
        file_with(piece="flap: {edges: [top, foot], lines: frill, begins: {frill: ¶2}}"),
    ),
    (
        "unknown-mark",
        file_with(piece="flap: {edges: [top, foot], lines: frill, begins: {¶fril: 2 from top}}"),
    ),
    ("unknown-mark", file_with(piece="flap: {edges: [top], begins: {¶frill: 2 from top}}")),
    (
        "unknown-edge",
        file_with(piece="flap: {edges: [top, foot], lines: frill, begins: {¶frill: 2 from tip}}"),
    ),
    ("wrong-type", file_with(top="glossary: ¶ease")),
    ("wrong-type", file_with(top="glossary: ¶{}")),
    ("wrong-type", file_with(top="glossary: {ease: ¶[room]}")),
    ("empty-value", file_with(top="glossary:\n  ease:¶")),
    ("long-name", file_with(top=f"glossary: {{¶{'e' * 65}: room}}")),
    ("wrong-type", file_with(piece="flap: {edges: [a, b], notches: ¶2}")),
    ("wrong-type", file_with(piece="flap: {edges: [a, b], notches: ¶{}}")),
    ("empty-list", file_with(piece="flap: {edges: [a, b], notches: {a: ¶[]}}")),
    ("unreadable-notch", file_with(piece="flap: {edges: [a, b, c], notches: {a: ¶3}}")),
    ("unreadable-notch", file_with(piece="flap: {edges: [a, b, c], notches: {a: ¶twofold}}")),
    ("unreadable-notch", file_with(piece="flap: {edges: [a, b, c], notches: {a: ¶x from b}}")),
    (
        "unreadable-notch",
        file_with(piece="flap: {edges: [a, b, c], notches: {a: [single, ¶middle 2 from b]}}"),
    ),
    ("unreadable-notch", file_with(piece="flap: {edges: [a, b, c], notches: {a: ¶9999 m from b}}")),
    ("unknown-edge", file_with(piece="flap: {edges: [a, b, c], notches: {¶d: single}}")),
    ("not-next-to", file_with(piece="flap: {edges: [a, b, c, d], notches: {a: ¶2 from c}}")),
    ("not-next-to", file_with(piece="flap: {edges: [a, b, c], notches: {a: ¶2 from fold}}")),
    ("not-next-to", file_with(piece="flap: {cut: fold, edges: [a, b], notches: {a: ¶2 from c}}")),
    ("notch-either-end", file_with(piece="flap: {edges: [a, b, c, b], notches: {a: ¶2 from b}}")),
    (
        "notch-beyond",
        file_with(piece="flap: {edges: [a, b, c], lengths: {a: 9}, notches: {a: [¶9 from b]}}"),
    ),
    ("unknown-spot", file_with(operation="x: {buttonhole: ¶patch.tab}")),
    ("spot-on-other-side", file_with(operation="x: {buttonhole: ¶cuff.dot@right}")),
    ("no-sides", file_with(operation="x: {buttonhole: ¶strap@left}")),
    ("sides-unknown", file_with(operation="x: {buttonhole: ¶sleeve@left}")),
    ("unreadable-place", file_with(operation="x: {buttonhole: ¶cuff.}")),
    ("unreadable-place", file_with(operation="x: {buttonhole: ¶'@left'}")),
    ("unknown-piece", file_with(operation="x: {buttonhole: ¶cufff@left}")),
    ("unreadable-number", file_with(operation="x: {buttonhole: cuff, number: ¶none}")),
    ("wrong-type", file_with(operation="x: {buttonhole: ¶{cuff: 2}}")),
    # operations
    ("wrong-type", file_with(operation="x: ¶sew the sides")),
    ("empty-value", file_with(operation="x:¶")),
    ("no-verb", file_with(operation="¶x: {note: nothing}")),
    ("no-verb", file_with(operation="x: {¶hm: front.hem}")),
    ("no-verb", file_with(operation="¶x: {}")),
    ("two-verbs", file_with(operation="x: {hem: front.hem, ¶sew: back.centre}")),
    ("two-verbs", file_with(operation="x: {sew: back.centre, ¶band: back.hem}")),
    ("unknown-key", file_with(operation="x: {hem: front.hem, ¶depht: 2}")),
    ("key-of-other-verb", file_with(operation="x: {hem: front.hem, ¶overlap: 2}")),
    ("missing-key", file_with(operation="x: {attach: ¶zip}")),
    ("missing-key", file_with(operation="¶x: {insert: zip}")),
    ("missing-key", file_with(operation="¶x: {tack: front.hem}")),
    ("unknown-piece", file_with(operation="x: {sew: front.side, to: ¶bakc}")),
    ("unknown-edge", file_with(operation="x: {sew: front.side, to: ¶strap}")),
    (
        "uneven-run",
        file_with(
            operation="x: {sew: [front.side, front.hem], to: ¶[back.side, back.hem, back.waist]}"
        ),
    ),
    ("no-other-side", file_with(operation="x: {sew: ¶pocket.mouth}")),
    ("no-other-side", file_with(operation="x: {sew: [back.centre, ¶back.opening@left]}")),
    ("sewn-to-itself", file_with(operation="x: {sew: back.centre, to: ¶back.centre}")),
    ("sewn-to-itself", file_with(operation="x: {sew: front.side, to: ¶front}")),
    (
        "sewn-to-itself",
        file_with(operation="x: {sew: [front.side, back.side], to: [¶front.side, back.hem]}"),
    ),
    ("unknown-choice", file_with(operation="x: {sew: back.centre, as: ¶frnch}")),
    ("unreadable-direction", file_with(operation="x: {sew: back.centre, press: ¶back.side}")),
    ("unreadable-length", file_with(operation="x: {sew: back.centre, allowance: ¶wide}")),
    ("unreadable-part", file_with(operation="x: {sew: back.centre, part: ¶lowest 10}")),
    ("unreadable-part", file_with(operation="x: {sew: back.centre, part: ¶some from hem}")),
    ("unreadable-part", file_with(operation="x: {sew: back.centre, stop: ¶10 from hem}")),
    ("not-next-to", file_with(operation="x: {sew: back.centre, part: ¶10 from waist}")),
    (
        "not-next-to",
        file_with(operation="x: {sew: front.waist, to: back.waist, stop: ¶10 before hem}"),
    ),
    (
        "part-and-stop",
        file_with(operation="x: {sew: back.centre, part: 10 from hem, stop: ¶10 before hem}"),
    ),
    ("neither-yes-nor-no", file_with(operation="x: {sew: back.centre, in one: ¶maybe}")),
    ("unknown-choice", file_with(operation="x: {sew: back.centre, method: ¶around}")),
    (
        "round-and-flat",
        file_with(operation="x: {hem: front.hem, method: in the round, flat: ¶yes}"),
    ),
    ("unknown-operation", file_with(operation="x: {sew: back.centre, open: ¶lok}")),
    ("open-itself", file_with(operation="x: {sew: back.centre, open: ¶x}")),
    ("unknown-operation", file_with(operation="x: {insert: tape, in: ¶chanel}")),
    ("no-casing", file_with(operation="x: {insert: tape, in: ¶look}")),
    ("edge-wanted", file_with(operation="x: {insert: zip, in: ¶back}")),
    ("key-of-zip", file_with(operation="x: {insert: tape, in: channel, method: ¶centred}")),
    ("cuts-without-finish", file_with(operation="x: {sew: back.centre, cuts: ¶6 mm}")),
    (
        "on-top-of-zip",
        file_with(
            operation="x: {insert: zip, in: back.opening, method: centred, on top: ¶left}"
        ),
    ),
    ("overlap-of-zip", file_with(operation="x: {insert: zip, in: back.opening, overlap: ¶2}")),
    ("unknown-fastening", file_with(operation="x: {tack: front.hem, to: ¶zipp}")),
    ("to-itself", file_with(operation="x: {tack: front.hem, to: ¶x}")),
    ("unknown-station", file_with(operation="x: {do: Look, station: ¶irno}")),
    ("unreadable-number", file_with(operation="x: {do: Look, minutes: ¶1.5}")),
    ("unknown-operation", file_with(operation="x: {do: Look, after: [look, ¶chanel/press]}")),
    ("after-itself", file_with(operation="x: {do: Look, after: ¶x}")),
    ("part-without-name", file_with(operation="x: {do: Look, after: ¶look/}")),
    ("unknown-result", file_with(operation="x: {do: Look, makes: strap, uses: ¶starp}")),
    ("unknown-result", file_with(operation="x: {do: Look, uses: ¶strap}")),
    (
        "made-twice",
        file_with(operation="x: {do: A, makes: loop}\n  y: {do: B, makes: [tie, ¶loop]}"),
    ),
    ("uses-its-own", file_with(operation="x: {do: A, makes: loop, uses: ¶loop}")),
    ("bad-name", file_with(operation="x: {do: A, makes: ¶a loop}")),
    (
        "made-twice",
        file_with(
            top=_CHOICES,
            operation="x: {do: A, makes: loop, when: {view: plain}}\n  y: {do: B, makes: ¶loop}",
        ),
    ),
    ("missing-key", file_with(operation="¶x: {band: front.waist}")),
    ("missing-key", file_with(operation="¶x: {bind: front.waist}")),
    ("missing-key", file_with(operation="¶x: {tower placket: sleeve.vent}")),
    ("missing-key", file_with(operation="¶x: {patch pocket: pocket}")),
    ("missing-key", file_with(operation="¶x: {in-seam pocket: pocket}")),
    ("unknown-thing", file_with(operation="x: {bind: front.waist, with: ¶tpae}")),
    ("unknown-thing", file_with(operation="x: {attach: ¶strpa, at: front}")),
    ("at-and-to", file_with(operation="x: {attach: strap, at: front, to: ¶back}")),
    ("unknown-choice", file_with(operation="x: {band: front.waist, with: cuff, ends: ¶joint}")),
    ("unknown-choice", file_with(operation="x: {band: front.waist, with: cuff, close: ¶glue}")),
    ("unknown-choice", file_with(operation="x: {band: front.waist, with: cuff, from: ¶wrong}")),
    ("unknown-choice", file_with(operation="x: {sew: back.centre, sides: ¶right}")),
    ("key-of-other-verb", file_with(operation="x: {hem: front.hem, ¶ends: joined}")),
    ("unknown-choice", file_with(operation="x: {strap: strap, method: ¶rolled}")),
    ("key-of-other-verb", file_with(operation="x: {strap: strap, ¶on: front}")),
    ("unreadable-length", file_with(operation="x: {sew: back.centre, topstitch: ¶'0,5'}")),
    ("unreadable-length", file_with(operation="x: {sew: back.centre, topstitch: ¶-1}")),
    ("wrong-type", file_with(operation="x: {sew: back.centre, topstitch: ¶[yes]}")),
    ("unknown-edge", file_with(operation="x: {sew: back.centre, between: ¶strap.edn}")),
    (
        "unknown-edge",
        file_with(operation="x: {sew: back.centre, between: {strap.end: ¶back.cetnre}}"),
    ),
    (
        "caught-elsewhere",
        file_with(operation="x: {sew: back.centre, between: {strap.end: ¶back.hem}}"),
    ),
    ("caught-in-itself", file_with(operation="x: {sew: back.centre, between: ¶back.centre@left}")),
    ("unknown-thing", file_with(operation="x: {sew: back.centre, between: [tape, ¶starp]}")),
    ("wrong-type", file_with(operation="x: {sew: back.centre, between: ¶{}}")),
    ("unreadable-hours", file_with(operation="x: {wait: ¶a day}")),
    ("unreadable-hours", file_with(operation="x: {wait: ¶0}")),
    ("unreadable-hours", file_with(operation="x: {wait: ¶[24]}")),
    ("empty-value", file_with(operation="x: {wait: ¶''}")),
    ("unreadable-hours", file_with(operation="x: {wait: ¶9999 days}")),
    ("no-zip", file_with(operation="x: {open: ¶tape}")),
    ("unknown-notion", file_with(operation="x: {open: ¶zpi}")),
    ("no-gap", file_with(operation="x: {close: ¶channel}")),
    ("no-gap", file_with(operation="x: {close: ¶y}\n  y: {hem: front.hem}")),
    ("to-itself", file_with(operation="x: {close: ¶x}")),
    ("unknown-operation", file_with(operation="x: {close: ¶bga}")),
    ("no-slit", file_with(operation="x: {tower placket: ¶sleeve.in, with: cuff}")),
    ("no-slit", file_with(operation="x: {tower placket: ¶front.side, with: cuff}")),
    ("unknown-edge", file_with(operation="x: {patch pocket: pocket, at: front, open: ¶muoth}")),
    ("key-of-zip", file_with(operation="x: {insert: tape, in: channel, with: ¶strap}")),
    ("with-without-bound", file_with(operation="x: {sew: back.side, with: ¶strap}")),
    ("key-of-zip", file_with(operation="x: {insert: tape, in: channel, part: ¶3 from side}")),
    ("two-verbs", file_with(operation="x: {hold: front.waist, ¶band: back.waist, with: cuff}")),
    ("wrong-type", file_with(operation="x: {do: ¶[A, B]}")),
)  # fmt: skip

# More than one thing is wrong at one place, so that no single repair helps.
LOST: tuple[tuple[str, str], ...] = (
    ("unclosed-list", "garment: A\nabout: [a b\n\n\n c¶: {d\n"),
    ("unclosed-quote", "a: 'x\nb: \"y\n¶"),
    ("unclosed-braces", "garment: A\nabout: {a\n  b\n  c\n¶"),
    ("uneven-indent", 'garment: "a" ¶"b" "c"\n'),
    ("stray-colon", "a: b\n  c\n d¶: e: f: g\n"),
    ("missing-colon", "garment: A\nb, c\n¶d, e\nunits: cm\n"),
    ("wrong-type", "garment: A\noperations:\n  ¶- do: x\n  - do: y\n"),
)

WARNINGS: tuple[tuple[str, str], ...] = (
    (
        "listed-twice",
        file_with(piece="flap: {edges: [a, b, c], notches: {a: [3 from b, ¶3 from b]}}"),
    ),
    ("unlike-lengths", file_with(top="allowance: ¶{cm: 1.5, in: 3/4}")),
    ("options-alike", file_with(top="choices: {¶view: [plain, lined]}")),
    (
        "options-alike",
        file_with(
            top="choices: {¶view: [plain, lined, short]}",
            operation="x: {do: A, when: {view: short}}",
        ),
    ),
    (
        "listed-twice",
        file_with(top=_CHOICES, operation="x: {do: A, when: {view: [plain, ¶plain]}}"),
    ),
    ("listed-twice", file_with(piece="flap: {edges: [a], darts: [a, {on: ¶a, number: 2}]}")),
    ("listed-twice", file_with(piece="flap: {spots: [tab, ¶tab]}")),
    ("listed-twice", file_with(top="sizes: [S, M, ¶S]")),
    ("listed-twice", file_with(operation="x: {buttonhole: [cuff.tab, ¶cuff.tab]}")),
    ("listed-twice", file_with(operation="x: {sew: back.centre, between: [tape, ¶tape]}")),
    ("listed-twice", file_with(operation="x: {fuse: [cuff, ¶cuff half]}")),
    ("look-alike-names", file_with(piece="¶Pocket: {cut: 2}")),
    ("look-alike-names", file_with(fabric="¶cânvas: woven")),
    ("look-alike-names", file_with(piece="flap: {edges: [top, side, ¶Top]}")),
    ("listed-twice", file_with(operation="x: {do: A, after: [look, ¶look]}")),
    ("same-mark", file_with(station="¶press: {title: sleeve press, mark: I}")),
    ("unknown-direction", file_with(operation="x: {sew: back.centre, press: ¶to bakc}")),
    ("unknown-direction", file_with(operation="x: {sew: back.centre, topstitch: ¶sideways}")),
    ("edge-wanted", file_with(operation="x: {sew: back.centre, between: ¶pocket}")),
    ("edge-wanted", file_with(operation="x: {sew: back.centre, between: [tape, ¶pocket]}")),
    ("because-of-nothing", file_with(operation="x: {do: A, because: ¶it is so}")),
)


def _check(slug: str, marked: str, severity: Severity) -> None:
    text, line, column = split_mark(marked)
    loaded = load_text(text)
    told = [(d.slug, d.span and (d.span.line, d.span.column)) for d in loaded.diagnostics]
    assert told == [(slug, (line, column))]
    assert loaded.diagnostics[0].severity is severity
    assert (loaded.garment is None) == (severity is Severity.ERROR)


@pytest.mark.parametrize(("slug", "marked"), ERRORS + LOST)
def test_an_error_is_told_once_and_at_its_place(slug: str, marked: str) -> None:
    _check(slug, marked, Severity.ERROR)


@pytest.mark.parametrize(("slug", "marked"), WARNINGS)
def test_a_warning_is_told_once_and_the_garment_is_read(slug: str, marked: str) -> None:
    _check(slug, marked, Severity.WARNING)


@pytest.mark.parametrize("marked", [text for _, text in ERRORS + WARNINGS])
def test_messages_have_no_final_period_and_repairs_have_one(marked: str) -> None:
    for item in load_text(marked.replace(MARK, "")).diagnostics:
        assert item.message[-1] not in ".?!"
        assert "\n" not in item.message
        if item.fix is not None:
            assert item.fix[-1] in ".?!"


def test_every_sentence_of_a_fault_has_a_case() -> None:
    texts = [text.replace(MARK, "") for _, text in ERRORS + LOST + WARNINGS]
    texts += [written(meant, slip) for meant, slip, *_ in SLIPS.values()]
    messages = [item.message for text in texts for item in load_text(text).diagnostics]
    beyond_a_line = {"file-too-large", "not-utf-8", "not-utf-16", "too-many-values"}
    beyond_a_line |= {"too-many-names", "more-findings"}
    # In workroom files, see test_workroom.py.
    beyond_a_line |= {"expected-workroom", "expected-machine", "expected-way", "unknown-machine"}
    missing = []
    for key, sentence in faults.SENTENCES.items():
        if key.startswith("fault-") and key.removeprefix("fault-") not in beyond_a_line:
            pattern = re.sub(
                r"\\{\w+\\}", ".+", re.escape(sentence.replace("}}", "}").replace("{{", "{"))
            )
            if not any(re.fullmatch(pattern, message) for message in messages):
                missing.append(key)
    assert missing == []


def test_every_sentence_of_a_fault_is_used() -> None:
    folder = Path(seqplan.load.__path__[0])
    source = "\n".join(path.read_text("utf-8") for path in folder.glob("*.py"))
    for key in faults.SENTENCES:
        head, _, rest = key.partition("-")
        if head == "fault":
            assert f'"{rest}"' in source, key
        elif head == "fix":
            assert f'"{key}"' in source or f"fault-{rest}" in faults.SENTENCES, key
