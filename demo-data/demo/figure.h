// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "demo/mesh.h"
#include "demo/swing.h"

namespace plumbmark::demo {

enum class Legs { trousers, shorts, skirt };
enum class Hat { none, cap, visor, bucket, beanie };
enum class Pattern { plain, stripes, band, check, blocks, dots };

/// What the player looks like.
struct Look {
    Rgb skin, hair, shirt, shirtSecond, trousers, trousersSecond, shoe, sole, hat, belt, glove, socks;
    Pattern shirtPattern = Pattern::plain;
    bool checkedTrousers = false;
    double sleeve =
        0.72; ///< 0 none, 0.72 short (share of the upper arm), 1 and more: down the forearm (2 = wrist)
    Legs legs = Legs::trousers;
    Hat hatKind = Hat::cap;
    bool longHair = false, bald = false;
    bool gloved = true;
    double looseness = 1.0; ///< how wide the clothes fall
    Rgb ball{0.85f, 0.85f, 0.83f};
    std::uint64_t seed = 1;
};
[[nodiscard]] Look randomLook(std::uint64_t seed, bool woman, bool child);

/// Number of each surface in the texture list.
enum Surface : int {
    skinSurface,
    faceSurface,
    hairSurface,
    shirtSurface,
    sleeveSurface,
    trouserSurface,
    shoeSurface,
    soleSurface,
    gloveSurface,
    beltSurface,
    buckleSurface,
    hatSurface,
    shaftSurface,
    gripSurface,
    headSurface,
    ballSurface,
    teeSurface,
    sockSurface,
    buttonSurface,
    surfaceCount
};
[[nodiscard]] std::vector<Texture> makeTextures(const Look& look);

/// The player and the club at one instant. `ball`: where it lies or flies, or nothing.
void buildFigure(Mesh& mesh, const Pose& pose, const Body& body, const ClubSize& club, const Look& look);
void buildBall(Mesh& mesh, V3 centre, bool teed, double teeHeight);

/// Points of the surface that are landmarks.
struct SurfacePoints {
    V3 nose, crown, leadEar, trailEar, buckle, sternum, pelvisRear;
    V3 headLow, headHigh; ///< x and y: the bare head's least and greatest; z: of its centre
    V3 leadingEdge;
};
[[nodiscard]] SurfacePoints surfacePoints(const Pose& pose, const Body& body, const ClubSize& club,
                                          const Look& look);

} // namespace plumbmark::demo
