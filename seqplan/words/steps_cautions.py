"""What to take care of."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "caution-intro": (
        "These are usual cautions. The rules of your workroom, school or country, and the manuals"
        " of your machines, come first."
    ),
    "caution-lockstitch-title": "Sewing machine",
    "caution-lockstitch": (
        "Switch it off, or take your foot off the pedal, before you thread it or change the needle"
        " or the foot. Keep fingers beside the foot, never in front of the needle. If a needle"
        " breaks, stop and find every piece."
    ),
    "caution-overlocker-title": "Overlocker",
    "caution-overlocker": (
        "A knife moves beside the needles and cuts whatever reaches it: keep fingers, pins and"
        " other layers away, leave the guards on, and switch off before threading."
    ),
    "caution-coverstitch-title": "Coverstitch machine",
    "caution-coverstitch": (
        "It has several needles: keep fingers beside the foot, and switch off before threading."
    ),
    "caution-iron-title": "Iron",
    "caution-iron": (
        "The sole and the steam burn. Set it on its heel or stand, try the heat on a scrap, keep"
        " the cord out of the way, pull the plug when you leave, and air the room when you fuse."
        " Plastic pins and zip coils melt."
    ),
    "caution-hand-title": "Hand needles",
    "caution-hand": "Count needles out and in, keep them in a cushion, and use a thimble.",
    "caution-pins-title": "Pins",
    "caution-pins": (
        "Put pins across the edge, take each out before the needle reaches it, and never hold them"
        " in your mouth."
    ),
    "caution-cutting-title": "Scissors and rotary cutter",
    "caution-cutting": (
        "Pass scissors closed and handles first. Cut away from yourself, close the guard of a"
        " rotary cutter after every cut, and box old blades."
    ),
    "caution-slashing-title": "Cutting into a piece",
    "caution-slashing": (
        "A slit cannot be taken back: read the whole step, mark the end, and cut with the points"
        " of small scissors, away from the hand that holds the cloth."
    ),
    "caution-ripper-title": "Seam ripper",
    "caution-ripper": (
        "It slips when it is pushed hard. Put a pin across the end of a buttonhole as a stop, cut"
        " towards the middle, keep the other hand behind the blade, and close the cap afterwards."
    ),
    "caution-child-title": "Made for a child",
    "caution-child": (
        "Small parts must not come off, and rules differ from country to country: look up those"
        " for children's clothes, and for sleepwear also those on fire, before you give it away or"
        " sell it."
    ),
    "caution-child-cord-title": "Cords on children's clothes",
    "caution-child-cord": (
        "Cords at hood and neck have killed children, and many countries forbid them or limit"
        " their length elsewhere; look up the rules that hold where it will be worn, and leave the"
        " cord out if in doubt."
    ),
    "caution-child-small-title": "Small parts",
    "caution-child-small": (
        "For children under three, sew nothing on that could come off and be swallowed, such as"
        " {parts}; pull hard at each before use."
    ),
    "caution-maybe-child-title": "If a child will use it",
    "caution-maybe-child": (
        "It has a cord. Many countries forbid or limit cords on children's clothes; look up the"
        " rules that hold where it will be used."
    ),
}
