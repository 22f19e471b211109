"""What a handout cannot show: letters without a shape, and pictures that are damaged inside."""

from seqplan.base.errors import SeqplanError


class BoxedLettersWarning(UserWarning):
    """Letters stand as boxes, for want of their shapes; ``letters`` are all of them."""

    def __init__(self, letters: frozenset[str]) -> None:
        super().__init__("".join(sorted(letters)))
        self.letters = letters


class UnprintableImagesError(SeqplanError):
    """Pictures of the author's cannot be shown; ``images`` are the bytes of their files."""

    def __init__(self, images: tuple[bytes, ...]) -> None:
        super().__init__(len(images))
        self.images = images
