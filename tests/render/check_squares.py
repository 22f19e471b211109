"""The check squares of a page of a PDF, measured from what draws them."""


def squares_at_the_foot(page):
    """Width and height, in millimetres, of the closed outlines below the text of a page."""
    stack, matrix, path = [], (1, 0, 0, 1, 0, 0), []

    def see(operator, operands, *_):
        nonlocal matrix, path
        values = [float(value) for value in operands if isinstance(value, int | float)]
        match operator:
            case b"q":
                stack.append(matrix)
            case b"Q":
                matrix = stack.pop()
            case b"cm":
                matrix = _times(values, matrix)
            case b"re":
                x, y, wide, high = values
                path = [_at(matrix, x, y), _at(matrix, x + wide, y + high)]
            case b"m":
                path = [_at(matrix, *values)]
            case b"l":
                path.append(_at(matrix, *values))
            case b"S" | b"s" if path and max(y for _, y in path) < 28:
                wide, high = (max(each) - min(each) for each in zip(*path, strict=True))
                found.append((wide, high))

    found = []
    page.extract_text(visitor_operand_before=lambda op, args, _cm, _tm: see(op, args))
    return found


def _times(one, other):
    a, b, c, d, e, f = one
    p, q, r, s, t, u = other
    return (
        a * p + b * r,
        a * q + b * s,
        c * p + d * r,
        c * q + d * s,
        e * p + f * r + t,
        e * q + f * s + u,
    )


def _at(matrix, x, y):
    a, b, c, d, e, f = matrix
    return tuple(each / 72 * 25.4 for each in (a * x + c * y + e, b * x + d * y + f))
