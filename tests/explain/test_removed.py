"""Whatever the author of a shipped garment wrote and then forgot is named, or may be lacking.

Every operation is taken out, one at a time. What the check says nothing of stands in ``MAY_LACK``
with the reason why a garment may do without it; nothing may stand there that is told.
"""

import pytest
import yaml
from garments.shipped import FOLDER, GARMENTS, opened, put

from seqplan.pipeline import open_garment

MAY_LACK = {
    ("breakwater-skirt", "stay-waist"): "the file does not tell that the waist is curved",
    ("chandlery-tote", "edge"): "a topstitched edge is a matter of taste",
    ("ferry-waistcoat", "press-edges"): "the seams are pressed; that of the edges is for looks",
    ("gull-skirt", "gathers"): "the file does not tell that the tier is wider than what it joins",
    ("lamp-room-tee", "sleeve-hems"): "knit does not ravel, and may stay as it is cut",
    ("lamp-room-tee", "close-rib"): "a band that goes all round joins its ends by itself",
    ("lamp-room-tee", "hem"): "knit does not ravel, and may stay as it is cut",
    ("lamp-room-tee", "sides"): "knit does not ravel: sides left open are a tabard",
    ("lantern-dress", "wash"): "cloth may have been washed before",
    ("lantern-dress", "cut"): "the file may begin with pieces that are cut",
    ("lantern-dress", "mark"): "the file may begin with pieces that are marked",
    ("lantern-dress", "stay-neck"): "the file does not tell that the neck is curved",
    ("lantern-dress", "sleeve-caps"): "a cap need not be wider than its armhole",
    ("lantern-dress", "try-on"): "who knows the pattern need not try it on",
    ("lantern-dress", "hang"): "the file does not tell how the skirt is cut to the grain",
    ("lantern-dress", "look-over"): "looking over is a counsel",
    ("pilot-boat-trousers", "belt-loops"): "what is sewn to a band may hang from one end",
    ("pilot-boat-trousers", "loop-ends"): "what a seam catches may hang from one end",
    ("pilot-boat-trousers", "fit"): "who knows the pattern need not try it on",
    ("slipway-pinafore", "bib-waist"): "the waist seam catches the facing with the bib anyway",
    ("slipway-pinafore", "gathers"): "the file does not tell that the skirt is wider than its band",
}


def variants(path):
    choices = opened(path.stem).loaded.garment.choices
    return [{c.id: option} for c in choices for option in c.options] or [{}]


def removals():
    for path in GARMENTS:
        for picks in variants(path):
            for entry in opened(path.stem, tuple(picks.items())).garment.garment.entries:
                name = f"{path.stem} {' '.join(picks.values())} without {entry.id}"
                yield pytest.param(path.stem, picks, entry.id, id=name)


def told_without(garment, picks, entry, folder):
    text = (FOLDER / f"{garment}.yaml").read_text(encoding="utf-8")
    document = yaml.load(text, Loader=yaml.BaseLoader)
    del document["operations"][entry]
    path = put(folder, yaml.safe_dump(document, sort_keys=False))
    return open_garment(path, picks).findings


@pytest.mark.parametrize(("garment", "picks", "entry"), list(removals()))
def test_what_is_forgotten_is_named_or_may_be_lacking(garment, picks, entry, tmp_path):
    findings = told_without(garment, picks, entry, tmp_path)
    assert (findings == ()) == ((garment, entry) in MAY_LACK)


def test_only_what_is_there_may_be_lacking():
    entries = {(p.stem, e.id) for p in GARMENTS for e in opened(p.stem).loaded.garment.entries}
    assert set(MAY_LACK) <= entries
