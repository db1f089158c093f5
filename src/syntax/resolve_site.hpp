/// \file
/// From the draft of a site to a Site: names to ids, defaults filled in, ranges and rules of the site checked.
#pragma once

#include <vector>

#include "syntax/draft.hpp"
#include "syntax/instances.hpp"
#include "syntax/names.hpp"

namespace cairn::syntax {

/// The site with what could be resolved; whole when no problem was added. Adds its names to `names`, in which the
/// parameters stand already where they are known, and to `claims` what has to be so in every instance. Without a
/// platform nothing is said about ranges.
[[nodiscard]] Site resolve_site(const SiteDraft& draft, const PlatformDraft* platform, Names& names, Claims& claims,
                                Problems& problems);

/// The devices whose address is open, in the site's order.
[[nodiscard]] std::vector<DeviceId> open_addresses(const SiteDraft& draft);

/// Of a site that is read by itself: the parameters that it names, each of any value, are added to `names`.
[[nodiscard]] std::vector<Parameter> declare_parameters_of(const SiteDraft& draft, Names& names);

}  // namespace cairn::syntax
