"""What to take care of."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "caution-intro": (
        "These are usual cautions. The rules of your workroom, school or country, and the manuals"
        " of your machines, come first."
    ),
    "caution-cutting-title": "Scissors and rotary cutter",
    "caution-cutting": (
        "Pass scissors closed and handles first. With a rotary cutter stand, cut away from yourself"
        " along a thick ruler, close the guard after every cut, and box old blades."
    ),
    "caution-pins-title": "Pins",
    "caution-pins": (
        "Put pins across the edge, take each out before the needle reaches it, and never hold them"
        " in your mouth. A magnet finds dropped ones; keep it from pacemakers, computers"
        " and small children."
    ),
    "caution-lockstitch-title": "Sewing machine",
    "caution-lockstitch": (
        "Switch it off, or take your foot off the pedal, before you thread it or change the needle"
        " or the foot. Keep fingers beside the foot, never in front of the needle, and tie hair and"
        " loose sleeves back. If a needle breaks, stop and find every piece."
    ),
    "caution-overlocker-title": "Overlocker",
    "caution-overlocker": (
        "A knife moves beside the needles and cuts whatever reaches it: keep fingers, pins and"
        " other layers away, leave the guards on, and switch off before you thread it, change a"
        " needle or clear the knife."
    ),
    "caution-coverstitch-title": "Coverstitch machine",
    "caution-coverstitch": (
        "It has several needles: keep fingers beside the foot, and switch off before threading."
    ),
    "caution-iron-title": "Iron",
    "caution-iron": (
        "The sole and the steam burn. Set it on its heel or stand, never face down; try the heat on"
        " a scrap, fill it unplugged, keep the cord out of the way, and pull the plug when you"
        " leave. Plastic pins and zip coils melt."
    ),
    "caution-fusing-title": "Fusing",
    "caution-fusing": (
        "The adhesive is hot and sticks to skin: use a press cloth, keep to the maker's heat and"
        " time, leave the piece to cool, and air the room."
    ),
    "caution-washing-title": "Washing cloth",
    "caution-washing": (
        "Follow the care label. A strong colour may bleed, so wash it alone; use no solvent, and"
        " let nobody reach into a running machine."
    ),
    "caution-hand-title": "Hand needles",
    "caution-hand": "Count needles out and in, keep them in a cushion, and use a thimble.",
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
    "caution-setting-title": "Eyelets, rivets and studs",
    "caution-setting": (
        "Set them on a firm surface, fingers clear of the tool, and protect your eyes when you"
        " strike it: a slanting blow makes them fly."
    ),
    "caution-child-title": "Made for a child",
    "caution-child": (
        "Rules differ from country to country. Look up those for children's clothes, and for"
        " sleepwear also those on fire (in the United States 16 CFR 1615 and 1616), before you give"
        " it away or sell it; whoever makes at home is bound by some of them, too."
    ),
    "caution-child-cord-title": "Cords on children's clothes",
    "caution-child-cord": (
        "Cords at hood and neck have killed children, and long ends elsewhere catch in doors and"
        " playground equipment. EN 14682 in Europe, ASTM F1816 and the CPSC in the United States"
        " forbid some and limit others by age: look up what holds where it will be worn, and leave"
        " the cord out if in doubt."
    ),
    "caution-child-small-title": "Small parts",
    "caution-child-small": (
        "For children under three, sew nothing on that could come off and be swallowed, such as"
        " {parts} (16 CFR 1501 in the United States measures such parts); pull hard at each before"
        " use. If a needle breaks, find every piece before the garment goes on."
    ),
    "caution-zip-pull": "the pull of a zip",
    "caution-maybe-child-title": "If a child will use it",
    "caution-maybe-child": (
        "It has a cord. Many countries forbid or limit cords on children's clothes; look up the"
        " rules that hold where it will be used."
    ),
}
