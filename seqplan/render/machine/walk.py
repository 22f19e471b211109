"""Rehearsals as data."""

from collections.abc import Sequence

from seqplan.explain.rehearsed import tell_repair
from seqplan.recipes.construction import Construction
from seqplan.rehearse.edges import EdgeNow
from seqplan.rehearse.lying import After
from seqplan.rehearse.repair import gap_places, repairs
from seqplan.rehearse.trouble import Trouble, tell_trouble
from seqplan.rehearse.walk import Rehearsal
from seqplan.render.machine.document import Data


def walk_data(c: Construction, steps: Sequence[After], found: Rehearsal) -> Data:
    """Give a rehearsal: the steps, how far it went, what stands in the way, what would help."""
    return {
        "order": list(found.order),
        "reached": found.reached,
        "steps": [_step(step) for step in steps],
        "troubles": [_trouble(trouble) for trouble in found.troubles],
        "repairs": [
            {
                "move": list(repair.moved),
                "above" if repair.is_above else "below": repair.anchor,
                "says": tell_repair(repair),
            }
            for repair in repairs(c, found)
        ],
        "gap_in_one_of": list(gap_places(c, found)),
        "left_undone": [{"operation": debt.op, "why": debt.why} for debt in found.debts],
    }


def _step(step: After) -> Data:
    return {
        "entry": step.entry,
        "operations": list(step.ops),
        "parts": [
            {
                "pieces": list(lie.pieces),
                "open_edges": [list(loop) for loop in lie.open_edges],
                "tube": len(lie.open_edges) > 1,
                "twisted": lie.is_twisted,
            }
            for lie in step.lies
        ],
        "to_be_turned": list(step.to_be_turned),
        "gaps": list(step.gaps),
        "zips_shut": list(step.shut),
        "raw": list(step.raw),
        "edges": [_edge(edge) for edge in step.edges],
        "caught": list(step.caught),
        "folded": list(step.folded),
        "basted": list(step.basted),
        "wet": list(step.wet),
        "away": list(step.away),
        "setting": list(step.setting),
        "look_before": list(step.look_before),
        "no_iron": list(step.no_iron),
        "trimmed": [{"edge": edge, "left_mm": float(left)} for edge, left in step.trimmed],
    }


def _edge(edge: EdgeNow) -> Data:
    return {
        "edge": edge.name,
        "state": edge.state.kind.value,
        "finished": edge.state.is_finished,
        "pressed": edge.pressed,
        "understitched": edge.understitched,
        "allowance_mm": None if edge.left is None else float(edge.left),
    }


def _trouble(trouble: Trouble) -> Data:
    return {
        "operation": trouble.op,
        "why": trouble.why,
        "blame": trouble.blame,
        "missing": trouble.missing,
        "says": tell_trouble(trouble),
    }
