// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "exporting/page.h"

#include <algorithm>

namespace plumbmark::exporting {

void moveDown(Item& item, double by) {
    struct Mover {
        double by;
        void operator()(Rectangle& r) const { r.box.y += by; }
        void operator()(Picture& p) const { p.box.y += by; }
        void operator()(Text& t) const { t.box.y += by; }
        void operator()(Shape& s) const { s.centre.y += by; }
        void operator()(Line& l) const {
            l.from.y += by;
            l.to.y += by;
        }
    };
    std::visit(Mover{by}, item);
}

Page stacked(std::vector<Page> pages) {
    Page all;
    all.width = all.height = 0.0;
    for (Page& page : pages) {
        for (Item& item : page.items) {
            moveDown(item, all.height);
            all.items.push_back(std::move(item));
        }
        all.width = std::max(all.width, page.width);
        all.height += page.height;
        if (all.title.empty()) {
            all.title = page.title;
        }
    }
    return all;
}

} // namespace plumbmark::exporting
