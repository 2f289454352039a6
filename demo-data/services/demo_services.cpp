// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "services/demo_services.h"

#include "demo/render.h"
#include "demo/spec.h"
#include "marks/player.h"

namespace plumbmark::demo {
namespace {
namespace fs = std::filesystem;

base::Result<std::vector<fs::path>> render(const fs::path& folder, const std::optional<std::string>& name,
                                           const base::Progress& progress) {
    CaseOptions options;
    options.name = name.value_or("sound");
    const auto spec = makeSpec(options);
    if (!spec) {
        return spec.error();
    }
    options.fileStem = options.name + "-" + std::string(marks::viewName(spec->view));
    const auto swing = renderCase(options, folder, progress);
    if (!swing) {
        return swing.error();
    }
    return std::vector<fs::path>{swing->clip, swing->truth};
}

} // namespace

void addServices(cli::Services& services) {
    for (const CaseInfo& info : cases()) {
        services.demoCases.push_back({std::string(info.name), std::string(info.sentence)});
    }
    services.renderDemo = render;
}

} // namespace plumbmark::demo
