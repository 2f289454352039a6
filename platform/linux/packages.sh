#!/usr/bin/env bash
# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
#
# Installs the Debian 12 packages that Plumbmark needs: `packages.sh build` (program and app) or
# `packages.sh test` (these and what the tests read); `packages.sh fuzz` what the guided fuzzer needs besides. Does
# nothing when all are there.
set -euo pipefail

build=(
  g++ cmake ninja-build pkg-config git ca-certificates
  libavformat-dev libavcodec-dev libavutil-dev libswscale-dev libswresample-dev
  libopencv-dev nlohmann-json3-dev libsodium-dev libsqlite3-dev libqrencode-dev libzxing-dev
  qt6-base-dev qt6-declarative-dev qt6-declarative-dev-tools libgl-dev libegl-dev
  qml6-module-qtquick qml6-module-qtquick-controls qml6-module-qtquick-layouts qml6-module-qtquick-templates
  qml6-module-qtquick-window qml6-module-qtquick-dialogs qml6-module-qtquick-shapes qml6-module-qtqml
  qml6-module-qtqml-models qml6-module-qtqml-workerscript qml6-module-qt-labs-folderlistmodel
  qt6-multimedia-dev qt6-l10n-tools
  fonts-dejavu-core fonts-noto-core
  npm
)
test=(
  "${build[@]}"
  libgtest-dev libgmock-dev libzip-dev libzbar-dev
  qml6-module-qttest xvfb xauth x11-xkb-utils xkb-data libgl1-mesa-dri libgl1-mesa-glx
  ffmpeg sqlite3 unzip zip python3 python3-jsonschema poppler-utils chromium
  opencv-doc darknet python3-skimage assimp-testmodels
)

fuzz=(
  "${build[@]}"
  clang-14 libclang-rt-14-dev llvm-14
)

case "${1:-}" in
  build) wanted=("${build[@]}") ;;
  test) wanted=("${test[@]}") ;;
  fuzz) wanted=("${fuzz[@]}") ;;
  *) echo "Say which packages: packages.sh build|test|fuzz" >&2; exit 2 ;;
esac

missing=()
for package in "${wanted[@]}"; do
  # npm and node also come from other sources than Debian's package: the command is what counts.
  if [ "$package" = npm ] && command -v npm >/dev/null 2>&1; then
    continue
  fi
  if [ "$(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null)" != installed ]; then
    missing+=("$package")
  fi
done
if [ "${#missing[@]}" -eq 0 ]; then
  echo "All ${#wanted[@]} Debian packages are there."
  exit 0
fi

sudo=()
if [ "$(id -u)" -ne 0 ]; then
  command -v sudo >/dev/null || { echo "Run as root or install sudo: ${#missing[@]} Debian packages are missing: ${missing[*]}" >&2; exit 1; }
  sudo=(sudo)
fi
echo "Installing ${#missing[@]} Debian packages: ${missing[*]}"
export DEBIAN_FRONTEND=noninteractive
"${sudo[@]}" apt-get update -q
"${sudo[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends "${missing[@]}"
