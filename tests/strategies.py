"""Made-up operations and reasons, by hand and by Hypothesis."""

from hypothesis import strategies as st

from seqplan.base.ids import OpId, RuleSlug
from seqplan.base.strength import Strength
from seqplan.graph.reason import Arc, Reason, ReasonKind

LETTERS = tuple(OpId(letter) for letter in "abcdefghijklmnopqrstuvwxyz")


def reason(*alternatives, strength=Strength.MUST, because="It is so.", kind=ReasonKind.RULE):
    """Build a reason from short texts: ``reason("ab")``, ``reason("ab cb", "bc")``."""
    return Reason(
        alternatives=tuple(
            tuple(Arc(OpId(before), OpId(after)) for before, after in bundle.split())
            for bundle in alternatives
        ),
        kind=kind,
        strength=strength,
        rule=RuleSlug("made-up"),
        because=because,
    )


@st.composite
def operations(draw, least=0, most=6):
    """Draw letters in any written order."""
    size = draw(st.integers(least, most))
    return tuple(draw(st.permutations(LETTERS[:size])))


def arcs(names):
    return st.builds(Arc, st.sampled_from(names), st.sampled_from(names)).filter(
        lambda arc: arc.before != arc.after
    )


@st.composite
def reasons(draw, names, most_arcs=6, most_choices=4, acyclic=False):
    """Draw plain arcs and either-ors of two or three bundles.

    ``acyclic`` makes all plain arcs follow a hidden order, so that orders are more likely.
    """
    if len(names) < 2:
        return ()
    bundle = st.lists(arcs(names), min_size=1, max_size=3).map(tuple)
    plain = draw(st.lists(arcs(names), max_size=most_arcs))
    if acyclic:
        hidden = {name: place for place, name in enumerate(draw(st.permutations(names)))}
        plain = [
            arc if hidden[arc.before] < hidden[arc.after] else Arc(arc.after, arc.before)
            for arc in plain
        ]
    choices = draw(
        st.lists(st.lists(bundle, min_size=2, max_size=3).map(tuple), max_size=most_choices)
    )
    strength = st.sampled_from(Strength)
    return tuple(
        Reason(
            alternatives=alternatives,
            kind=draw(st.sampled_from(ReasonKind)),
            strength=draw(strength),
            rule=RuleSlug("made-up"),
            because=f"Reason {number}.",
        )
        for number, alternatives in enumerate([*(((arc,),) for arc in plain), *choices])
    )


@st.composite
def problems(draw, least=0, most=5, **options):
    """Draw operations and reasons between them."""
    names = draw(operations(least, most))
    return names, draw(reasons(names, **options))


def setups(names, most=3):
    """Draw a set-up for every operation."""
    return st.fixed_dictionaries({name: st.integers(1, most) for name in names})
