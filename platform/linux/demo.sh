#!/usr/bin/env bash
# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
#
# One command from a fresh Debian 12 machine to a lesson: packages, pose network, build, a demo swing, the main
# job on it, checkpoints on the terminal, lesson file and key-position sheet, and the app when a display is
# there. Safe to repeat. `demo.sh --no-app` stops before the app.
set -euo pipefail
cd "$(dirname "$0")/../.."

open_app=yes
[ "${1:-}" = "--no-app" ] && open_app=no
out=${PLUMBMARK_DEMO_DIR:-$PWD/build/demo}
missing=()

echo "[1/6] Debian packages"
bash platform/linux/packages.sh build

echo "[2/6] Pose network"
if ! bash platform/linux/fetch-network.sh; then
  missing+=("the pose network (no automatic body marks until platform/linux/fetch-network.sh has worked)")
fi

echo "[3/6] Build (the first time takes some minutes)"
cmake --preset release >/dev/null
cmake --build --preset release
plumbmark=$PWD/build/release/plumbmark

echo "[4/6] Demo swing"
mkdir -p "$out"
clip=$out/sound-face-on.mp4
[ -s "$clip" ] || "$plumbmark" demo "$out" --case sound

echo "[5/6] The main job: measure, judge, keep"
library=$out/library
export PLUMBMARK_LIBRARY=$library
lesson=$out/lesson.plumbmark
sheet=$out/key-positions.png
"$plumbmark" measure "$clip" --view face-on --hand right --club iron-7 --stature 178 --distance 4.5 \
  --json "$out/measured.json" --sheet "$sheet"
if [ ! -s "$lesson" ]; then
  "$plumbmark" lesson add "$clip" --player "Ilse Marrok" --view face-on --hand right --club iron-7 --stature 178 --distance 4.5
  "$plumbmark" consent "Ilse Marrok" --scope film,analyse,keep,share
  "$plumbmark" lesson export latest "$lesson" --sheet "$sheet"
fi
"$plumbmark" lesson verify "$lesson"

echo "[6/6] Done"
echo "  clip                $clip"
echo "  numbers             $out/measured.json"
echo "  key-position sheet  $sheet"
echo "  lesson file         $lesson"
for what in "${missing[@]}"; do
  echo "  missing: $what"
done
if [ "$open_app" = yes ] && [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
  exec "$plumbmark" play --library "$library"
fi
echo "To open the app: $plumbmark play --library $library"
