"""Writes what the product loads: `export.py CHECKPOINT_FOLDER EXAMPLES_FOLDER MODEL_FOLDER`.

The weights lie in the file with 16 bits and are made 32-bit numbers once, as it is loaded: half the file,
and the sums are those of a CPU. The layout is the one that the transformers library reads.
"""

import argparse
import json
import os
import shutil

import numpy as np
import torch

from data import END, PAD
from model import Phraser, Size, normed, rotary_table
from onnx_file import FLOAT, INT64, node, onnx_file, shaped, tensor


class Graph:
    def __init__(self):
        self.nodes, self.tensors, self.count = [], [], 0

    def add(self, operator, *inputs, outputs=None, **attributes):
        if outputs is None:
            self.count += 1
            outputs = [f"v{self.count}"]
        self.nodes.append(node(operator, inputs, outputs, **attributes))
        return outputs[0] if len(outputs) == 1 else outputs

    def constant(self, value, kind=np.float32):
        self.count += 1
        name = f"c{self.count}"
        self.tensors.append(tensor(name, np.asarray(value, kind)))
        return name

    def weight(self, name, values):
        self.tensors.append(tensor(name, values.astype(np.float16)))
        return self.add("Cast", name, to=FLOAT)

    def split(self, value, sizes, axis):
        outputs = [f"v{self.count + 1 + index}" for index in range(len(sizes))]
        self.count += len(sizes)
        return self.add("Split", value, self.constant(sizes, np.int64), outputs=outputs, axis=axis)

    def normed(self, x, epsilon):
        squares = self.add("ReduceMean", self.add("Mul", x, x), axes=[-1], keepdims=1)
        root = self.add("Sqrt", self.add("Add", squares, self.constant(epsilon)))
        return self.add("Div", x, root)

    def shape_at(self, value, axis):
        return self.add("Gather", self.add("Shape", value), self.constant([axis], np.int64))


def rotated(graph, x, cos, sin, half):
    first, second = graph.split(x, [half, half], 3)
    turned = graph.add("Concat", graph.add("Neg", second), first, axis=-1)
    return graph.add("Add", graph.add("Mul", x, cos), graph.add("Mul", turned, sin))


def mask_of(graph):
    """What a token may look at: nothing after it, and nothing that is only there to fill a row."""
    total, length = graph.shape_at("attention_mask", 1), graph.shape_at("input_ids", 1)
    zero, one, empty = (graph.constant(value, np.int64) for value in (0, 1, [0]))
    squeezed = [graph.add("Squeeze", size, empty) for size in (total, length)]
    keys = graph.add("Range", zero, squeezed[0], one)
    past = graph.add("Sub", squeezed[0], squeezed[1])
    asking = graph.add("Add", graph.add("Range", zero, squeezed[1], one), past)
    later = graph.add("Greater", keys, graph.add("Unsqueeze", asking, graph.constant([1], np.int64)))
    nought, far = graph.constant(0.0), graph.constant(-1e9)
    causal = graph.add("Where", later, far, nought)
    filled = graph.add("Equal", "attention_mask", graph.constant(0, np.int64))
    filling = graph.add("Where", filled, far, nought)
    filling = graph.add("Unsqueeze", filling, graph.constant([1, 2], np.int64))
    return graph.add("Add", causal, filling)


def block(graph, x, at, given):
    weights, size, cos, sin, mask = given
    matrix = lambda name: graph.weight(f"{at}.{name}", weights[f"blocks.{at}.{name}.weight"].T)
    qkv = graph.add("MatMul", graph.normed(x, size.epsilon), matrix("qkv"))
    heads = graph.constant([0, 0, size.heads, size.head], np.int64)
    parts = graph.split(qkv, [size.hidden] * 3, 2)
    q, k, v = (graph.add("Transpose", graph.add("Reshape", part, heads), perm=[0, 2, 1, 3]) for part in parts)
    q, k = (rotated(graph, part, cos, sin, size.head // 2) for part in (q, k))
    k = graph.add("Concat", f"past_key_values.{at}.key", k, outputs=[f"present.{at}.key"], axis=2)
    v = graph.add("Concat", f"past_key_values.{at}.value", v, outputs=[f"present.{at}.value"], axis=2)
    scores = graph.add("MatMul", q, graph.add("Transpose", k, perm=[0, 1, 3, 2]))
    scores = graph.add("Mul", scores, graph.constant(size.head ** -0.5))
    seen = graph.add("MatMul", graph.add("Softmax", graph.add("Add", scores, mask), axis=-1), v)
    seen = graph.add("Reshape", graph.add("Transpose", seen, perm=[0, 2, 1, 3]), graph.constant([0, 0, size.hidden], np.int64))
    x = graph.add("Add", x, graph.add("MatMul", seen, matrix("out")))
    both = graph.add("MatMul", graph.normed(x, size.epsilon), matrix("gate_up"))
    gate, up = graph.split(both, [size.inner] * 2, 2)
    inner = graph.add("Mul", graph.add("Mul", gate, graph.add("Sigmoid", gate)), up)
    return graph.add("Add", x, graph.add("MatMul", inner, matrix("down")))


def write_onnx(weights, size, path):
    graph = Graph()
    table = graph.weight("tokens", weights["tokens.weight"])
    axis = graph.constant([1], np.int64)
    cos, sin = (
        graph.add("Unsqueeze", graph.add("Gather", graph.constant(part.numpy()), "position_ids"), axis)
        for part in rotary_table(size)
    )
    x = graph.add("Gather", table, "input_ids")
    mask = mask_of(graph)
    for at in range(size.layers):
        x = block(graph, x, at, (weights, size, cos, sin, mask))
    turned = graph.add("Transpose", table, perm=[1, 0])
    graph.add("MatMul", graph.normed(x, size.epsilon), turned, outputs=["logits"])
    caches = [f"{at}.{part}" for at in range(size.layers) for part in ("key", "value")]
    inputs = [shaped(name, INT64, ["batch", length]) for name, length in
              (("input_ids", "length"), ("attention_mask", "total"), ("position_ids", "length"))]
    inputs += [shaped(f"past_key_values.{cache}", FLOAT, ["batch", size.heads, "past", size.head]) for cache in caches]
    outputs = [shaped("logits", FLOAT, ["batch", "length", size.vocabulary])]
    outputs += [shaped(f"present.{cache}", FLOAT, ["batch", size.heads, "total", size.head]) for cache in caches]
    with open(path, "wb") as file:
        file.write(onnx_file(graph.nodes, graph.tensors, inputs, outputs))


def config(size, pad, end):
    return dict(
        architectures=["LlamaForCausalLM"], model_type="llama", vocab_size=size.vocabulary,
        hidden_size=size.hidden, intermediate_size=size.inner, num_hidden_layers=size.layers,
        num_attention_heads=size.heads, num_key_value_heads=size.heads, head_dim=size.head,
        max_position_embeddings=size.positions, rms_norm_eps=size.epsilon, rope_theta=size.theta,
        hidden_act="silu", tie_word_embeddings=True, eos_token_id=end, pad_token_id=pad,
    )


def tokenizer(tokens):
    special = [dict(id=id, content=token, single_word=False, lstrip=False, rstrip=False, normalized=False, special=True)
               for id, token in enumerate(tokens) if token in (PAD, "[UNK]", END)]
    model = dict(type="WordPiece", unk_token="[UNK]", continuing_subword_prefix="##",
                 max_input_chars_per_word=100, vocab={token: id for id, token in enumerate(tokens)})
    return dict(version="1.0", truncation=None, padding=None, added_tokens=special, normalizer=None,
                pre_tokenizer=dict(type="WhitespaceSplit"), post_processor=None,
                decoder=dict(type="WordPiece", prefix="##", cleanup=False), model=model)


def write_json(path, value):
    with open(path, "w") as file:
        json.dump(value, file)
        file.write("\n")


@torch.no_grad()
def write_reference(model, tokens, prompt, path):
    """What this network, rounded as its file is, thinks of one prompt: the product's runtimes must agree."""
    ids = torch.tensor([[tokens.index(token) for token in prompt]])
    logits = model(ids)[0, -1]
    write_json(path, dict(prompt=" ".join(prompt), logits=[round(value, 4) for value in logits.tolist()]))


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("checkpoint")
    parser.add_argument("examples")
    parser.add_argument("model")
    given = parser.parse_args()
    saved = torch.load(f"{given.checkpoint}/best.pt", map_location="cpu")
    size, tokens = Size(**saved["size"]), saved["tokens"]
    model = Phraser(size, 0).eval()
    model.load_state_dict({name: value.half().float() for name, value in saved["model"].items()})
    weights = {name: value.numpy() for name, value in model.state_dict().items()}
    os.makedirs(f"{given.model}/onnx", exist_ok=True)
    write_onnx(weights, size, f"{given.model}/onnx/model.onnx")
    pad, end = tokens.index(PAD), tokens.index(END)
    write_json(f"{given.model}/config.json", config(size, pad, end))
    write_json(f"{given.model}/generation_config.json", dict(eos_token_id=end, pad_token_id=pad))
    write_json(f"{given.model}/tokenizer.json", tokenizer(tokens))
    write_json(f"{given.model}/tokenizer_config.json", dict(
        tokenizer_class="PreTrainedTokenizerFast", unk_token="[UNK]", pad_token=PAD, eos_token=END,
        model_max_length=size.positions, clean_up_tokenization_spaces=False))
    for name in ("lexicon.json", "held-out.json"):
        shutil.copy(f"{given.examples}/{name}", f"{given.model}/{name}")
    shutil.copy(f"{given.checkpoint}/trained.json", f"{given.model}/trained.json")
    kind = next(token for token in tokens if token.startswith("@"))
    register = next(token for token in tokens if token.startswith("%"))
    write_reference(model, tokens, [kind, register, "[NOT]", END, "[SAY]"], f"{given.model}/reference.json")
    print(f"{os.path.getsize(f'{given.model}/onnx/model.onnx')} bytes of weights in {given.model}")


main()
