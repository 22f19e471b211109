"""Name a set-up: the station, and what is mounted there where that is not the usual."""

from seqplan.model.garment import Garment
from seqplan.model.operation import Setup
from seqplan.model.station import STANDARD_FOOT
from seqplan.tell.names import as_clause, readable, station_title
from seqplan.words.say import say, translated


def foot_name(foot: str) -> str:
    """The name of a presser foot, in English without the word "foot".

    >>> foot_name("zip foot"), foot_name("invisible zip")
    ('zip', 'invisible zip')
    """
    return translated("foot", readable(foot).removesuffix(" foot"))


def thread_name(thread: str) -> str:
    """The name of a thread, in English without the word "thread".

    >>> thread_name("gold thread"), thread_name("gold")
    ('gold', 'gold')
    """
    return translated("thread", as_clause(thread).removesuffix(" thread"))


def needle_name(needle: str) -> str:
    """The name of a needle, in English without the word "needle".

    >>> needle_name("twin needle 4.0/80"), needle_name("jeans needle")
    ('twin needle 4.0/80', 'jeans')
    """
    return translated("needle", as_clause(needle).removesuffix(" needle"))


def name_setup(garment: Garment, setup: Setup) -> str:
    """Name a set-up: the station, with the foot, thread and needle that are not the usual ones."""
    name = station_title(garment.station[setup.station])
    if setup.foot not in {"", STANDARD_FOOT}:
        name = say("sheet-setup-foot", setup=name, foot=foot_name(setup.foot))
    if setup.thread:
        name = say("sheet-setup-thread", setup=name, thread=thread_name(setup.thread))
    if setup.needle:
        name = say("sheet-setup-needle", setup=name, needle=needle_name(setup.needle))
    return name
