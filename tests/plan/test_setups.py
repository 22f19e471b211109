"""Threads and needles: what is mounted for which row, what changing it takes, what is saved."""

from itertools import pairwise

import pytest

from seqplan.load.document import load_text
from seqplan.model.workroom import Machine, Needs, Workroom
from seqplan.plan.binding import bind
from seqplan.plan.plan import Planner
from seqplan.plan.setups import change_minutes, needs_of
from seqplan.recipes.expand import construct
from seqplan.rules.derive import derive

APRON = """
garment: Dredger apron
allowance: 1
fabrics: {drill: {kind: woven}}
stations:
  lockstitch: {minutes: 2, foot minutes: 1, thread minutes: 3, needle minutes: 5}
pieces:
  bib:    {of: drill, edges: [top, side, waist, side]}
  skirt:  {of: drill, edges: [waist, side, hem, side]}
  badge:  {of: drill, edges: [top, round]}
operations:
  waist: {sew: bib.waist, to: skirt.waist, as: faced, topstitch: 0.5, thread: gold, needle: jeans}
  top:   {hem: bib.top, depth: 2, thread: gold}
  foot:  {hem: skirt.hem, depth: 2}
  edge:  {topstitch: badge.round, needle: jeans}
  name:  {do: Embroider the name., on: badge, station: hand, thread: red}
  wash:  {do: Sponge it., on: badge, station: table, needle: blunt}
"""


@pytest.fixture(scope="module")
def apron():
    return construct(load_text(APRON, "apron.yaml").garment)[0]


def test_where_a_seam_is_topstitched_the_thread_is_for_that_row_alone(apron):
    gold = {op.id for op in apron.operations if op.setup.thread}
    assert gold == {"waist/topstitch", "top"}
    assert apron.op["waist/topstitch"].setup.needle == "jeans"
    assert apron.op["waist"].setup == apron.op["foot"].setup


def test_only_a_machine_is_threaded_up(apron):
    assert apron.op["name"].setup.thread == apron.op["wash"].setup.needle == ""


def test_threading_and_changing_the_needle_cost_their_minutes(apron):
    def minutes(*ids):
        return change_minutes(apron, [apron.op[id_] for id_ in ids])

    assert minutes("foot", "top") == 3
    assert minutes("foot", "waist/topstitch") == minutes("waist/topstitch", "foot") - 8 == 8
    assert minutes("top", "waist/topstitch", "edge") == 3 + 5 + 3


def test_what_is_not_named_is_the_usual_thread_not_any_thread(apron):
    assert needs_of(apron, apron.op["foot"]).colour == needs_of(apron, apron.op["edge"]).colour
    assert needs_of(apron, apron.op["foot"]).colour not in {"", "gold"}
    assert needs_of(apron, apron.op["name"]).colour == ""


def test_rows_in_one_thread_are_sewn_in_one_visit(apron):
    plan = Planner(apron, bind(apron.ids, derive(apron))).batch()
    gold = [apron.op[id_].setup.thread == "gold" for id_ in plan.order]
    sewn = [is_gold for is_gold, id_ in zip(gold, plan.order, strict=True) if needs(apron, id_)]
    assert sum(one != other for one, other in pairwise(sewn)) <= 2


def needs(apron, id_):
    return apron.op[id_].setup.foot


def test_a_second_machine_threaded_up_saves_the_threading(apron):
    """Machines that are asked for by their own names keep what is mounted on them."""
    planner = Planner(apron, bind(apron.ids, derive(apron)))
    one = Workroom((Machine("m", "lockstitch", colour_minutes=3, needle_minutes=5),))
    usual = Workroom.of_stations(apron.garment.stations)
    prices = {
        kind: planner.batch(workroom=Workroom((machine, *usual.machines[1:]))).price
        for kind, machine in {
            "dear": one.machines[0],
            "cheap": Machine("m", "lockstitch"),
            "mounted": Machine(
                "m", "lockstitch", colour_minutes=3, mounted=Needs("lockstitch", colour="gold")
            ),
        }.items()
    }
    assert prices["cheap"] < prices["mounted"] <= prices["dear"]
