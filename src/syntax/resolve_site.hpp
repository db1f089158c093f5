/// \file
/// From the draft of a site to a Site: names to ids, defaults filled in, ranges and rules of the site checked.
#pragma once

#include <optional>

#include "syntax/draft.hpp"
#include "syntax/names.hpp"

namespace cairn::syntax {

/// The site with what could be resolved; whole when no problem was added. Adds its names to `names`, in which the
/// parameters stand already where they are known. Without a platform nothing is said about ranges.
[[nodiscard]] Site resolve_site(const SiteDraft& draft, const PlatformDraft* platform, Names& names,
                                Problems& problems);

/// The first place at which the site is open, if it is.
[[nodiscard]] std::optional<Place> open_place(const SiteDraft& draft);

}  // namespace cairn::syntax
