from dataclasses import replace
from functools import cache
from pathlib import Path

import networkx as nx
import pytest
from hypothesis import given
from hypothesis import strategies as st
from rules.reasoning import construction, reasons_of_file
from tools.copies import copies, renamed_id

from seqplan.base.strength import Strength
from seqplan.graph.reason import ReasonKind
from seqplan.recipes.expand import construct
from seqplan.rules.derive import derive

SHIPPED = sorted((Path(__file__).parents[2] / "garments").glob("*.yaml"))

every_garment = pytest.mark.parametrize("path", SHIPPED, ids=lambda path: path.stem)


@cache
def shipped(path):
    return reasons_of_file(path)


@given(st.sampled_from(SHIPPED), st.data())
def test_shuffling_the_entries_changes_no_reason(path, data):
    built, reasons = shipped(path)
    garment = built.garment
    mixed = replace(garment, entries=tuple(data.draw(st.permutations(garment.entries))))
    again, problems = construct(mixed)
    assert not problems
    assert derive(again) == reasons


@every_garment
def test_every_reason_names_operations_that_exist_and_a_place_in_the_file(path):
    built, reasons = shipped(path)
    assert {op for reason in reasons for op in reason.operations} <= set(built.ids)
    assert all(reason.source[0] == "operations" for reason in reasons)
    assert all(reason.because.endswith(".") for reason in reasons)


@every_garment
def test_no_reason_is_given_twice(path):
    _, reasons = shipped(path)
    assert len(set(reasons)) == len(reasons)


@every_garment
@pytest.mark.parametrize("strengths", [{Strength.MUST}, {Strength.MUST, Strength.SHOULD}])
def test_the_arcs_of_a_shipped_garment_go_round_in_no_circle(path, strengths):
    _, reasons = shipped(path)
    arcs = nx.DiGraph(
        (arc.before, arc.after)
        for reason in reasons
        if not reason.is_either_or and reason.strength in strengths
        for arc in reason.alternatives[0]
    )
    assert nx.is_directed_acyclic_graph(arcs)


def test_what_the_author_says_holds_for_every_part_of_the_entry():
    built = construction(
        """
operations:
  late: {do: come late, after: early, because: I say so.}
  early: {do: come early}
pieces: {}
""".replace("pieces: {}\n", "")
    )
    (reason,) = derive(built)
    assert (reason.kind, reason.rule, reason.because) == (ReasonKind.SAID, "after", "I say so.")
    assert reason.source == ("operations", "late", "after")


def test_a_part_can_be_asked_for_by_itself():
    built = construction("""
pieces:
  front: {cut: fold, edges: [waist, side, hem]}
  back: {cut: fold, edges: [waist, side, hem]}
operations:
  sides: {sew: front.side, to: back.side, as: pressed open}
  look: {do: look at it, after: sides/press}
  rest: {do: rest, after: sides}
""")
    said = {
        (arc.before, arc.after)
        for reason in derive(built)
        if reason.kind is ReasonKind.SAID
        for arc in reason.alternatives[0]
    }
    assert said == {
        ("sides/press", "look"),
        ("sides", "rest"),
        ("sides/finish", "rest"),
        ("sides/press", "rest"),
    }


OF_INSPECTIONS = {"inspected-last", "looked-at-before-cut-into"}


@every_garment
def test_two_garments_in_one_file_have_the_reasons_of_each(path):
    """Rules may ask about what hangs together by itself.

    An inspection of all of one garment is no inspection of all of both, but one on the way.
    """
    built, reasons = shipped(path)
    both, problems = construct(copies(built.garment, 2))
    assert not problems
    for suffix in ("-0", "-1"):

        def rename(id_, suffix=suffix):
            return renamed_id(id_, built.garment.piece, suffix)

        ours = {rename(id_) for id_ in built.ids}
        assert ours <= set(both.ids)
        mine = [reason for reason in derive(both) if reason.operations <= ours]
        got = {_said(reason) for reason in mine if reason.rule not in OF_INSPECTIONS}
        assert got == {_said(r, rename) for r in reasons if r.rule not in OF_INSPECTIONS}


def _said(reason, rename=str):
    bundles = (
        frozenset((rename(arc.before), rename(arc.after)) for arc in bundle)
        for bundle in reason.alternatives
    )
    return reason.rule, reason.strength, frozenset(bundles)
