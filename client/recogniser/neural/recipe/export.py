"""Writes what the product loads: `export.py CHECKPOINT MODEL_FOLDER [--reference FOLDER --held-out FOLDER]`.

`model.onnx` holds its large matrices as 8-bit whole numbers with one scale a column, made real again by
DequantizeLinear when it runs: only the file is small, the sums are the same as before. Beside it,
`model.json` says what goes in and comes out. The reference is one held-out utterance and what this
network, not yet rounded, makes of it: the tests hold the product's runtimes to it.
"""

import argparse
import hashlib
import json

import numpy as np
import onnx
import torch
from onnx import helper, numpy_helper

from data import Spoken
from model import CONTEXT, DELAY, HOP, LEAD, STEP, WINDOW, Listener, Network
from phones import PHONES

STATE = ("audio", "waiting", "level", "mels", "memory")
OPSET = 13
REFERENCE_VOICE = "slt-hts"
# Matrices smaller than this are not worth the loss, nor are the convolutions: the trunk, which hears first.
AT_LEAST = 20_000


def load(checkpoint):
    network = Network()
    loaded = torch.load(checkpoint, map_location="cpu")["network"]
    network.load_state_dict({name: value.float() for name, value in loaded.items()})
    return Listener(network).eval()


def to_onnx(listener, path):
    listener.spectrum.by_waves = True
    # Long enough for a trace in which no cache is shorter than what is cut from it.
    example = (torch.zeros(1, STEP * HOP * 8), *listener.fresh_state())
    after = [f"{name}_after" for name in STATE]
    torch.onnx.export(
        listener,
        example,
        path,
        input_names=["samples", *STATE],
        output_names=["log_probabilities", "inner", *after],
        dynamic_axes={
            "samples": {1: "samples"},
            "log_probabilities": {1: "frames"},
            "inner": {1: "frames"},
        },
        opset_version=OPSET,
        do_constant_folding=True,
    )


def quantise(model):
    """The model with its large matrices in 8 bits, one scale for each column."""
    graph = model.graph
    matrices = {node.input[1] for node in graph.node if node.op_type == "MatMul"}
    tensors, nodes = [], []
    for tensor in graph.initializer:
        values = numpy_helper.to_array(tensor)
        if tensor.name not in matrices or values.size < AT_LEAST:
            tensors.append(tensor)
            continue
        scale = np.maximum(np.abs(values).max(0), 1e-8).astype(np.float32) / 127
        parts = dict(
            whole=np.clip(np.round(values / scale), -127, 127).astype(np.int8),
            scale=scale,
            zero=np.zeros(len(scale), np.int8),
        )
        names = {part: f"{tensor.name}.{part}" for part in parts}
        tensors += [numpy_helper.from_array(part, names[name]) for name, part in parts.items()]
        nodes.append(helper.make_node("DequantizeLinear", list(names.values()), [tensor.name], axis=1))
    before = list(graph.node)
    del graph.initializer[:], graph.node[:]
    graph.initializer.extend(tensors)
    graph.node.extend(nodes + before)
    return model


def describe(listener, edition):
    shapes = {name: list(part.shape) for name, part in zip(STATE, listener.fresh_state())}
    return dict(
        edition=edition,
        phones=PHONES,
        sampleRate=16000,
        samplesPerStep=STEP * HOP,
        frameSamples=2 * HOP,
        delaySamples=DELAY * HOP,
        windowSamples=WINDOW,
        innerSize=listener.network.width,
        state=shapes,
    )


def edition_of(model):
    """Another name for every other last layer: what was taught of a voice holds for one only."""
    last = {tensor.name: tensor for tensor in model.graph.initializer}["network.out.bias"]
    return hashlib.sha256(numpy_helper.to_array(last).tobytes()).hexdigest()[:12]


@torch.no_grad()
def write_reference(listener, held_out, folder):
    spoken = Spoken(held_out, "cpu", 2)
    spoken.grow()
    item = max(spoken.items, key=lambda item: (item["voice"] == REFERENCE_VOICE, -abs(len(item["labels"]) - 14)))
    at, count = item["pieces"][0]
    sound = spoken.sound[at : at + count // (STEP * HOP) * STEP * HOP].numpy()
    heard = listener.hear(torch.tensor(sound / 32768.0, dtype=torch.float32)[None])[0]
    sound.astype("<i2").tofile(f"{folder}/sound.i16")
    heard.numpy().astype("<f4").tofile(f"{folder}/log-probabilities.f32")
    with open(f"{folder}/said.txt", "w") as file:
        print(*(PHONES[label - 1] for label in item["labels"]), file=file)


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("checkpoint")
    parser.add_argument("folder")
    parser.add_argument("--reference")
    parser.add_argument("--held-out")
    chosen = parser.parse_args()
    listener = load(chosen.checkpoint)
    if chosen.reference:
        write_reference(listener, chosen.held_out, chosen.reference)
    path = f"{chosen.folder}/model.onnx"
    to_onnx(listener, path)
    model = quantise(onnx.load(path))
    onnx.checker.check_model(model)
    onnx.save(model, path)
    with open(f"{chosen.folder}/model.json", "w") as file:
        json.dump(describe(listener, edition_of(model)), file, indent=2)
        file.write("\n")
    print(path, len(model.SerializeToString()), "bytes")


if __name__ == "__main__":
    main()
