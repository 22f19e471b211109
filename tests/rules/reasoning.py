"""Garments from short texts, and what their reasons allow, found in the most stupid way."""

import itertools
import re

import networkx as nx

from seqplan.load.document import load_text
from seqplan.pipeline import open_garment
from seqplan.recipes.expand import construct


def garment(text):
    """Read a garment of which only the interesting half is written; the rest is filled in."""
    if not re.search(r"^garment:", text, re.MULTILINE):
        text = f"garment: A garment\n{text}"
    loaded = load_text(text)
    assert not loaded.diagnostics, loaded.diagnostics
    return loaded.garment


def construction(text):
    """Expand a garment that has nothing wrong with it."""
    built, problems = construct(garment(text))
    assert not problems, problems
    return built


def problems(text):
    """The slugs of what cannot be laid out."""
    return [problem.slug for problem in construct(garment(text))[1]]


def reasons_of_file(path, picks=None):
    opened = open_garment(path, picks)
    assert not opened.loaded.diagnostics
    assert not opened.laid_out
    return opened.garment, opened.reasons


def can_precede(reasons, before, after):
    """Whether some order that holds all reasons has ``before`` before ``after``."""
    graph = nx.DiGraph([(before, after)])
    choices = []
    for reason in reasons:
        if reason.is_either_or:
            choices.append(reason.alternatives)
        else:
            graph.add_edges_from((arc.before, arc.after) for arc in reason.alternatives[0])
    return _is_possible(graph, choices)


def _is_possible(graph, choices):
    if not nx.is_directed_acyclic_graph(graph):
        return False
    if not choices:
        return True
    for bundle in choices[0]:
        wider = graph.copy()
        wider.add_edges_from((arc.before, arc.after) for arc in bundle)
        if _is_possible(wider, choices[1:]):
            return True
    return False


def orders(texts):
    """Read ``a < b`` texts as pairs; ``a < b < c`` is two."""
    pairs = set()
    for text in texts:
        names = [name.strip() for name in text.split("<")]
        pairs.update(itertools.pairwise(names))
    return pairs
