"""The parts of an ONNX file, written without a package for it. Field numbers from onnx.proto
(github.com/onnx/onnx); a message is a list of (field number, value)."""

import struct

FLOAT, INT64, FLOAT16 = 1, 7, 10


def varint(value):
    value &= (1 << 64) - 1
    out = bytearray()
    while value >= 0x80:
        out.append(value & 0x7F | 0x80)
        value >>= 7
    out.append(value)
    return bytes(out)


def message(*fields):
    out = bytearray()
    for number, value in fields:
        if isinstance(value, bool) or isinstance(value, int):
            out += varint(number << 3) + varint(value)
        elif isinstance(value, float):
            out += varint(number << 3 | 5) + struct.pack("<f", value)
        else:
            value = value.encode() if isinstance(value, str) else value
            out += varint(number << 3 | 2) + varint(len(value)) + value
    return bytes(out)


def attribute(name, value):
    if isinstance(value, float):
        return message((1, name), (2, value), (20, 1))
    if isinstance(value, int):
        return message((1, name), (3, value), (20, 2))
    return message((1, name), *((8, one) for one in value), (20, 7))


def node(operator, inputs, outputs, **attributes):
    return message(
        *((1, name) for name in inputs),
        *((2, name) for name in outputs),
        (4, operator),
        *((5, attribute(name, value)) for name, value in attributes.items()),
    )


TYPES = {"float32": FLOAT, "int64": INT64, "float16": FLOAT16}


def tensor(name, array):
    return message(
        *((1, size) for size in array.shape), (2, TYPES[str(array.dtype)]), (8, name), (9, array.tobytes())
    )


def shaped(name, kind, dims):
    """A value's name, element type and shape; a dimension by name may be of any size."""
    sizes = [(1, message((1 if isinstance(dim, int) else 2, dim))) for dim in dims]
    return message((1, name), (2, message((1, message((1, kind), (2, message(*sizes)))))))


def onnx_file(nodes, tensors, inputs, outputs, opset=17):
    graph = message(
        *((1, each) for each in nodes),
        (2, "phraser"),
        *((5, each) for each in tensors),
        *((11, each) for each in inputs),
        *((12, each) for each in outputs),
    )
    return message((1, 8), (7, graph), (8, message((1, ""), (2, opset))))
