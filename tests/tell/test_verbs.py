"""Every action of every verb is told, and told in whole sentences: a small garment for each."""

import itertools
import re
from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest
from tell.sampler import OTHER_WAYS, SHIPPED, built, sheet

import seqplan.words.say as words
from seqplan.base.measure import Length
from seqplan.load.document import load_file
from seqplan.model.entry import Closing, Ends, Entry, SeamKind, StrapMethod, Verb, ZipMethod
from seqplan.model.garment import Garment, Notion, OwnSeam
from seqplan.model.piece import Edge, Piece
from seqplan.recipes.book import OWN_PARTS, recipe_for
from seqplan.recipes.expand import construct
from seqplan.tell.step import tell_operation, teller_of
from seqplan.words.steps import SENTENCES

FILES = tuple(sorted((Path(__file__).parent / "verbs").glob("*.yaml")))

NOT_A_SENTENCE = re.compile(
    r"  |[{}_]|\bNone\b|\b(\w+) \1\b|\ba the\b|\bthe (?:all|its|their)\b| [,.;:]|\.\.|of of"
)
"""What no printed sentence holds: doubled spaces and words, empty or unfilled places."""


@cache
def verb_garment(path):
    loaded = load_file(path)
    assert not loaded.diagnostics, loaded.diagnostics
    c, problems = construct(loaded.garment)
    assert not problems, problems
    return c


@cache
def other_allowance(path):
    """The same garment without its allowance, or with one where it has none."""
    garment = verb_garment(path).garment
    allowance = Length(15) if garment.allowance is None else None
    return construct(replace(garment, allowance=allowance))[0]


def told_of(path):
    """Everything a garment is told with, each operation with all that the file lists before it."""
    return [
        tell_operation(c, op, c.ids[:at])
        for c in (verb_garment(path), other_allowance(path))
        for at, op in enumerate(c.operations)
    ]


def recipes():
    """Every entry that makes a difference to what the recipe book gives."""
    notions = (Notion(id="n", kind="elastic"), Notion(id="l", kind="label"))
    casing = Entry(id="c", verb=Verb.CASING, gap=Length(30))
    own = OwnSeam("own", tuple(OWN_PARTS))
    pieces = (Piece(id="p", edges=(Edge("attach"),)),)
    garment = Garment(name="g", notions=notions, entries=(casing,), recipes=(own,), pieces=pieces)
    for verb in Verb:
        plain = Entry(id="e", verb=verb, notion="n")
        changes = itertools.chain(
            ({},),
            ({"seam": kind} for kind in SeamKind if kind is not SeamKind.OWN),
            ({"method": method} for method in ZipMethod),
            ({"closing": closing, "partners": ("p",)} for closing in Closing),
            ({"ends": ends, "partners": ("p",)} for ends in Ends),
            ({"strap": strap} for strap in StrapMethod),
            ({"own_seam": "own", "seam": SeamKind.OWN}, {"topstitch": "yes"}, {"into": "c"}),
            ({"turned": "once"}, {"pieces": ("p",)}, {"notion": "l"}),
        )
        for change in changes:
            is_join = verb is Verb.SEW
            if not is_join and {"own_seam", "seam"} & set(change):
                continue
            if "topstitch" in change and verb not in {
                Verb.SEW,
                Verb.BAND,
                Verb.BIND,
                Verb.STRAP,
            }:
                continue
            yield from ((verb, i.action) for i in recipe_for(plain._replace(**change), garment))


def test_whatever_a_recipe_does_has_its_teller():
    assert all(teller_of(verb, action) for verb, action in set(recipes()))


def test_the_verb_files_hold_whatever_a_recipe_does():
    held = {(c.entry(op).verb, op.action) for c in map(verb_garment, FILES) for op in c.operations}
    assert {(verb.value, action.value) for verb, action in set(recipes()) - held} == set()


def test_each_verb_has_a_file_of_its_own():
    assert {verb.value.replace(" ", "-") for verb in Verb} <= {path.stem for path in FILES}


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_what_a_verb_is_told_with_is_whole(path):
    for sentence in told_of(path):
        assert sentence.texts
        for text in filter(None, (*sentence.texts, sentence.check)):
            assert not NOT_A_SENTENCE.search(text), text
            assert text[-1] in ".!?", text
        for text in sentence.texts:
            assert text[0].isupper() or text[0].isdigit(), text


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_no_name_of_the_file_stands_as_it_is_written(path):
    c = verb_garment(path)
    names = (*c.garment.entry, *c.garment.piece, *c.garment.notion)
    raw = [name for name in names if "-" in name]
    for sentence in told_of(path):
        assert not [name for name in raw if name in f"{sentence.text} {sentence.check}"]


def test_every_sentence_for_a_step_is_used(monkeypatch):
    used = set()

    usual = words.sentence
    monkeypatch.setattr(words, "sentence", lambda key: used.add(key) or usual(key))
    for path in FILES:
        told_of(path)
        c = verb_garment(path)
        for op in c.operations:
            tell_operation(c, op, c.ids)
    for name in (*SHIPPED, *OTHER_WAYS, "dress", "tube"):
        c = built(name)
        for at, op in enumerate(c.operations):
            tell_operation(c, op, c.ids[:at])
        sheet.__wrapped__(name)
    steps = {key for key in SENTENCES if key.startswith("step-")}
    assert ", ".join(sorted(steps - used)) == ""
