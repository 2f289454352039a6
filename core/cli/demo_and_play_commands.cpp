// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "cli/commands.h"

namespace plumbmark::cli {
namespace fs = std::filesystem;

base::Result<int> runDemo(const Arguments& args, const Services& services, Streams streams) {
    if (!services.renderDemo) {
        return base::inputError("demo.absent",
                                "This build has no demo renderer; build with PLUMBMARK_DEMO=ON.");
    }
    const auto name = args.value("--case");
    const auto known = [&](const Services::DemoCase& c) { return c.name == *name; };
    if (name && std::none_of(services.demoCases.begin(), services.demoCases.end(), known)) {
        std::string all;
        for (const auto& c : services.demoCases) {
            all += (all.empty() ? "" : ", ") + c.name;
        }
        return base::inputError("arguments.word",
                                "--case knows " + all + ", not \"" + shown(*name, 40) + "\".");
    }
    const fs::path folder = *args.operand(0);
    std::error_code error;
    if (fs::exists(folder, error) && !fs::is_directory(folder, error)) {
        return base::inputError("output.no_folder",
                                "\"" + folder.string() + "\" is a file; give the name of a folder.");
    }
    const bool made = fs::create_directories(folder, error);
    if (error) {
        return base::inputError("output.not_writable", "The folder \"" + folder.string() +
                                                           "\" can't be made (" + error.message() +
                                                           "); choose another place.");
    }
    base::Result<std::vector<fs::path>> files = std::vector<fs::path>{};
    {
        const ProgressLine line(services, streams.err);
        files = services.renderDemo(folder, name, line.progress());
    }
    if (!files || files->empty()) {
        if (made) {
            fs::remove(folder, error); // only where it is empty
        }
        return files ? stopped() : files.error();
    }
    for (const fs::path& file : *files) {
        streams.out << file.string() << "\n";
    }
    return kDone;
}

base::Result<int> runPlay(const Arguments& args, const Services& services, Streams) {
    if (!services.openApp) {
        return base::inputError("app.absent", "This build has no app; use the build with Qt.");
    }
    if (const auto library = args.value("--library")) {
        return services.openApp(*library);
    }
    if (!services.libraryFolder) {
        return base::inputError("library.no_home", "Say where the library lies: --library FOLDER.");
    }
    const auto folder = services.libraryFolder();
    if (!folder) {
        return folder.error();
    }
    return services.openApp(*folder);
}

} // namespace plumbmark::cli
