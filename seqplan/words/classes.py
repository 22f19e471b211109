"""Sentences of the sheets for a class: learners, the teacher, state cards."""

from typing import Final

SENTENCES: Final[dict[str, str]] = {
    "class-kind-learner": "Learner's sheet",
    "class-kind-teacher": "Teacher's sheet",
    "class-kind-cards": "State cards",
    # For learners.
    "class-learner-about": (
        "Do the steps in their order and tick each box when that part is done and checked. After a"
        " step that is followed by \N{LEFT DOUBLE QUOTATION MARK}You may stop"
        " here\N{RIGHT DOUBLE QUOTATION MARK} nothing is half done, and the work can lie until next"
        " time."
    ),
    "class-name": "Name",
    "class-group": "Group",
    "class-date": "Date",
    "class-learners": "Learners",
    "class-sessions": "Sessions",
    "class-steps": "Steps",
    "class-ticks": "Things to tick",
    "class-stops": "Safe stops",
    "class-ahead": "At home, before the first session",
    "class-session": "Session {number}",
    "class-session-of": "Session {number} of {count}",
    "class-bring": "You need in this session",
    "class-bring-machines": "Machines and places",
    "class-bring-pieces": "Parts of the garment",
    "class-bring-notions": "Notions",
    "class-may-stop": "You may stop here.",
    "class-state": "Where the work stands now",
    "class-state-hand": "How it hangs together",
    "class-state-done": "Done so far",
    "class-state-open": "Not sewn to anything yet",
    "class-state-finished": "The same, but finished, so that it does not ravel",
    "class-state-untouched": "Not begun",
    "class-put-away": "Before you pack",
    "class-put-away-pins": "Count the pins and the hand needles; none stays in the work.",
    "class-put-away-iron": (
        "The iron is used for the last time in step {step}: switch it off then, so that it is cold"
        " when it is put away."
    ),
    "class-put-away-warm": "Let the work cool flat before you fold it.",
    "class-put-away-together": "Put everything into one bag with your name, with this sheet.",
    "class-put-away-wait": "Last of all: {deed}. That goes on until the next session.",
    "class-put-away-wait-hours-one": (
        "Last of all: {deed}, for at least an hour. That falls between this session and the next."
    ),
    "class-put-away-wait-hours": (
        "Last of all: {deed}, for at least {count} hours. That falls between this session and the"
        " next."
    ),
    "class-next": "Next time you begin with step {step}, {heading}, here: {place}.",
    "class-end": "With this session it is done.",
    # For the teacher.
    "class-teacher-about": (
        "The steps bear the same numbers as in the learner's sheet. Without minutes in the file a"
        " session is measured by the number of things to tick."
    ),
    "class-part-sessions": "Sessions",
    "class-col-session": "Session",
    "class-col-steps": "Steps",
    "class-col-ticks": "Things to tick",
    "class-col-minutes": "Minutes",
    "class-col-ends": "Ends after",
    "class-ends-after": "step {step}, {heading}",
    "class-ends-whole": "the garment is ready",
    "class-ends-wait": "step {step}, {heading}; then it has to wait",
    "class-few-stops": (
        "There are not as many safe stops as sessions were asked for, so there are fewer sessions."
    ),
    "class-more-waits": (
        "There are more sessions than were asked for, because the work has to wait in between."
    ),
    "class-safe-after-one": "Safe stop, besides the ends of sessions: after step {steps}.",
    "class-safe-after": "Safe stops, besides the ends of sessions: after steps {steps}.",
    "class-no-other-stops": "There is no safe stop besides the ends of the sessions.",
    "class-part-unsafe": "Where no session may end",
    "class-unsafe": "After step {step}: {why}",
    "class-unsafe-half-done": "{deed} belongs to what was begun.",
    "class-unsafe-drawn-up": "the gathers hang on their threads until {deed} holds them.",
    "class-unsafe-basted": "basting has still to come out ({deed}).",
    "class-unsafe-laid": "the layers are laid ready for {deed}.",
    "class-unsafe-unturned": "it is ready to be turned, and waits for {deed}.",
    "class-unsafe-gap": "the gap that it was turned through is open until {deed}.",
    # The queue.
    "class-part-queue": "Who needs which machine when",
    "class-queue-about": (
        "For every stretch between two safe stops: how often one learner needs each place. Where"
        " few machines are wanted by all at once, let one half of the group begin with the"
        " following stretch, if the two may change places."
    ),
    "class-col-swap": "Next may come first",
    "class-swap": "yes",
    "class-no-swap": "\N{EN DASH}",
    "class-turns": "{count}",
    "class-turns-of": "{count} ({turns})",
    "class-turns-about-one": (
        "In brackets: turns at each machine of that kind, when one learner has the machines of your"
        " workroom."
    ),
    "class-turns-about": (
        "In brackets: turns at each machine of that kind, when {count} learners share the"
        " machines of your workroom."
    ),
    "class-row-machines": "Machines in the room",
    "class-narrow-one": (
        "Longest queue: stretch {steps}, {place}: one turn at each machine, if nobody begins"
        " elsewhere."
    ),
    "class-narrow": (
        "Longest queue: stretch {steps}, {place}: {count} turns at each machine, if nobody begins"
        " elsewhere."
    ),
    # Step by step.
    "class-part-steps": "Step by step: techniques, mistakes, the latest point",
    "class-steps-about": (
        "A technique stands at the step where it is used first. The latest point is the last"
        " moment at which a mistake in the step is mended without undoing anything else; what it"
        " costs after that was worked out for this garment and this order."
    ),
    "class-new-skills": "New here",
    "class-goes-wrong": "Goes wrong",
    "class-look-at": "Look at",
    "class-latest": "Latest point",
    "class-latest-before": "before step {step}, {heading}",
    "class-latest-better": "before step {better}; at the latest before step {step}, {heading}",
    "class-latest-never": "at any time: nothing that follows is in the way",
    "class-latest-good": "before step {better} by good practice; it can be mended later, too",
    "class-why": "Why",
    "class-cost": "After that",
    "class-cost-then": "undo {count}: {deeds}",
    "class-cost-lost": "{cost}; this cannot be undone: {lost}",
    "class-cost-end": "At the end",
    "class-cost-end-count": "{count} of {all} things to undo",
    # Samples.
    "class-part-samples": "Samples to prepare",
    "class-samples-about": (
        "For a technique of many stages, or with a cut that stays, prepare one sample for each"
        " stage from scraps of the same cloth, each left as it is after that stage, and lay them"
        " out in a row."
    ),
    "class-no-samples": "No technique of this garment needs samples of its stages.",
    "class-col-skill": "Technique",
    "class-col-step": "Step",
    "class-col-samples": "A sample each of what is",
    "class-sample-count": "{count}: {stages}",
    # State cards.
    "class-cards-about": (
        "One card for each safe stop. Who stops there keeps the card with the work; it shows what"
        " is sewn, finished, pressed and still open."
    ),
    "class-card": "After step {step}: {heading}",
}
