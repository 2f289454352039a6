// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "records/film_copy.h"

#include "base/hash.h"

namespace plumbmark::records {

Object bodyOf(const FilmCopy& value) {
    Object body{{"of", value.of}, {"sha256", value.sha256}, {"bytes", value.bytes}};
    if (value.headCovered) {
        body.emplace("head_covered", true);
    }
    return body;
}

std::optional<FilmCopy> filmCopyOf(const Object& body) {
    FilmCopy copy;
    copy.of = textMember(body, "of").value_or("");
    copy.sha256 = textMember(body, "sha256").value_or("");
    copy.bytes = integerMember(body, "bytes").value_or(0);
    copy.headCovered = booleanMember(body, "head_covered").value_or(false);
    if (!base::isSha256Hex(copy.of) || !base::isSha256Hex(copy.sha256)) {
        return std::nullopt;
    }
    return copy;
}

Fact bareCopyFact(const Fact& clip, const FilmCopy& copy) {
    Fact fact;
    fact.id = *base::Id::fromHex(
        base::sha256OfText("bare copy " + clip.id.hex() + copy.of + copy.sha256).substr(0, 32));
    fact.kind = kind::filmCopy;
    fact.path = clip.path;
    fact.path.push_back(clip.id);
    fact.at = clip.at;
    fact.body = bodyOf(copy);
    return fact;
}

} // namespace plumbmark::records
