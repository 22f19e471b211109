"""Orders for a purpose, on garments small enough to see through."""

import itertools
from textwrap import dedent

from seqplan.load.document import load_text
from seqplan.model.station import DEFAULT_STATIONS
from seqplan.model.workroom import Machine, Workroom
from seqplan.order.result import Proof
from seqplan.plan.binding import bind
from seqplan.plan.plan import Planner, change_minutes
from seqplan.plan.unit import find_units
from seqplan.recipes.expand import construct
from seqplan.rules.derive import derive


def _planner(text: str):
    garment = load_text(dedent(text)).garment
    c, problems = construct(garment)
    assert not problems
    binding = bind(c.ids, derive(c))
    return c, binding, Planner(c, binding)


TUNIC = """
    garment: Quay tunic
    pieces:
      front: {cut: fold, edges: [neck, shoulder, armhole, side, hem]}
      back:  {cut: fold, edges: [neck, shoulder, armhole, side, hem]}
      collar: {cut: fold, edges: [neck, outer]}
    operations:
      shoulders: {sew: front.shoulder, to: back.shoulder, as: pressed open}
      collar-edge: {hem: collar.outer, depth: 1}
      sides: {sew: front.side, to: back.side, as: pressed open}
      hem: {hem: [front.hem, back.hem], depth: 2}
"""


def test_the_unit_of_an_operation_is_its_pieces_and_what_is_joined_to_them_before():
    c, binding, _ = _planner(TUNIC)
    units = find_units(c, binding.held)
    assert units["collar-edge"] == {"collar"}
    assert units["shoulders"] == {"front", "back"}
    assert units["hem"] == {"front", "back"}


def test_a_unit_that_the_entry_names_counts():
    c, binding, _ = _planner(
        TUNIC.replace("as: pressed open}", "as: pressed open, unit: front}", 1)
    )
    assert find_units(c, binding.held)["shoulders"] == {"front"}


def test_the_repair_moves_whole_entries():
    lines = TUNIC.splitlines()
    hem = next(line for line in lines if "hem: {hem: [front" in line)
    lines.remove(hem)
    lines.insert(lines.index("    operations:") + 1, hem)
    _, _, planner = _planner("\n".join(lines))
    plan = planner.repair()
    assert plan.moved == ("hem",)
    order = [op for op in plan.order if op.startswith("hem")]
    assert order == ["hem/turn-up", "hem", "hem/press"]


def test_a_foot_stays_on_its_machine_while_one_works_elsewhere():
    c, _, _ = _planner(
        """
        garment: Feet
        operations:
          a: {do: stitch, station: lockstitch, foot: zip}
          b: {do: press, station: iron, after: a}
          c: {do: stitch, station: lockstitch, foot: zip, after: b}
          d: {do: stitch, station: lockstitch, after: c}
        """
    )
    # foot zip 1, iron 3, back to the machine 2, standard foot 1
    assert change_minutes(c, c.operations) == 1 + 3 + 2 + 1


def test_free_words_alone_are_a_garment_that_can_be_ordered_and_batched():
    _, _, planner = _planner(
        """
        garment: Low door
        operations:
          cut:    {do: cut out}
          sew-a:  {do: sew a, station: lockstitch, after: cut}
          press-a: {do: press a, station: iron, after: sew-a}
          sew-b:  {do: sew b, station: lockstitch, after: cut}
          press-b: {do: press b, station: iron, after: sew-b}
        """
    )
    batch = planner.batch()
    assert batch.changes == 2
    assert [len(group.steps) for group in batch.groups] == [1, 2, 2]


def test_makes_and_uses_order_free_words():
    _, _, planner = _planner(
        """
        garment: Makes
        operations:
          pin: {do: pin the strap, uses: strap}
          strap: {do: make the strap, makes: strap}
        """
    )
    assert planner.repair().order == ("strap", "pin")


def test_shoulds_that_contradict_one_another_give_up_the_least_and_name_it():
    # The zip is set while the seam below is open (should); the author wants the seam first (must).
    _, binding, planner = _planner(
        """
        garment: Stubborn
        pieces:
          back: {cut: pair, edges: [waist, side, hem, centre | opening]}
        notions: {zip: invisible zip}
        operations:
          centre: {sew: back.centre, as: pressed open}
          zip: {insert: zip, in: back.opening, method: invisible, after: centre}
        """
    )
    assert [reason.rule for reason in binding.given_up] == ["invisible-zip-before-seam-below"]
    position = {id_: place for place, id_ in enumerate(planner.booklet().order)}
    assert position["centre"] < position["zip"]


def test_a_dear_machine_is_gone_to_less_often():
    c, _, planner = _planner(TUNIC)
    dear = Workroom(
        tuple(
            Machine(name=s.id, station=s.id, setup_minutes=60 if s.id == "iron" else 1)
            for s in DEFAULT_STATIONS
        )
    )
    plan = planner.batch(workroom=dear)
    assert plan.proof is Proof.OPTIMAL
    assert plan.price == plan.lower_bound

    def visits(order):
        at = [c.op[op].setup.station for op in order]
        return sum(b == "iron" != a for a, b in itertools.pairwise(["", *at]))

    assert visits(plan.order) <= visits(planner.batch().order)
    assert visits(plan.order) < visits(planner.booklet().order)
