#!/usr/bin/env bash
# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
#
# Installs what the tests need, builds with sanitizers and warnings as errors, runs every test (UI tests under
# Xvfb) and prints how long each step took.
set -euo pipefail
cd "$(dirname "$0")/../.."

steps=()
step() { # step TITLE COMMAND...
  local title=$1 began=$SECONDS
  shift
  echo "== $title"
  "$@"
  steps+=("$(printf '%3d:%02d  %s' $(((SECONDS - began) / 60)) $(((SECONDS - began) % 60)) "$title")")
}

network() {
  bash platform/linux/fetch-network.sh || echo "The pose network could not be fetched: the tests that need it are listed as skipped."
}
renderer() { # unsanitised: pictures only, and sanitizers would slow them tenfold
  cmake --preset release >/dev/null
  cmake --build --preset release --target plumbmark-render
}
configure() { cmake --preset ci >/dev/null; }
build() { cmake --build --preset ci; }
tests() {
  export QT_QPA_PLATFORM="${QT_QPA_PLATFORM:-xcb}"
  export PLUMBMARK_RENDERER="$PWD/build/release/demo-data/plumbmark-render"
  # One more than the cores: UI tests wait more than they work.
  local run=(ctest --preset ci -j3 --no-tests=error)
  if [ "$QT_QPA_PLATFORM" = xcb ]; then
    run=(xvfb-run -a -s "-screen 0 1600x1200x24" "${run[@]}")
  fi
  "${run[@]}"
}

step "Debian packages" bash platform/linux/packages.sh test
step "Pose network" network
step "Build the demo renderer (release)" renderer
step "Configure" configure
step "Build (sanitizers, warnings are errors)" build
step "Tests" tests

echo "== Minutes"
printf '%s\n' "${steps[@]}"
