# What the scripts share; to be sourced. Sets `root`, the top folder of the source tree, and works from there.
# shellcheck shell=bash
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
cd "$root" || exit

# A line that says what happens next, told apart from the output of the tools.
say() { printf '\n== %s\n' "$*"; }

# How many jobs to run side by side: one a core, or CAIRN_JOBS.
jobs=${CAIRN_JOBS:-$(nproc 2>/dev/null || echo 2)}

# configure PRESET [CMAKE-ARGUMENT…]: configures build/PRESET with the generator that the folder has already, else the
# one of CMAKE_GENERATOR, else Ninja where it is installed, else what CMake takes by default. Uses ccache where it is
# installed. A folder that was configured in another place of the disk (a copied tree) is laid anew.
configure() {
  local preset=$1 cache=build/$1/CMakeCache.txt
  shift
  if [[ -f $cache ]] && ! grep -qxF "CMAKE_HOME_DIRECTORY:INTERNAL=$root" "$cache"; then
    cmake -E rm -rf "build/$preset"
  fi
  if [[ -f $cache ]]; then
    CMAKE_GENERATOR=$(sed -n 's/^CMAKE_GENERATOR:INTERNAL=//p' "$cache")
  elif [[ -z ${CMAKE_GENERATOR:-} ]] && command -v ninja >/dev/null; then
    CMAKE_GENERATOR=Ninja
  fi
  [[ -z ${CMAKE_GENERATOR:-} ]] || export CMAKE_GENERATOR
  if [[ -z ${CMAKE_CXX_COMPILER_LAUNCHER:-} ]] && command -v ccache >/dev/null; then
    export CMAKE_CXX_COMPILER_LAUNCHER=ccache
  fi
  quietly "configuring build/$preset" cmake --preset "$preset" "$@"
}

# quietly WHAT COMMAND…: runs the command; its output is shown only where it fails.
quietly() {
  local what=$1 log
  shift
  log=$(mktemp)
  if ! "$@" >"$log" 2>&1; then
    cat "$log" >&2
    rm -f "$log"
    printf '\n%s failed; the output above says why.\n' "$what" >&2
    return 1
  fi
  rm -f "$log"
}

# stage NAME MINUTES COMMAND…: runs one of several checks, within its time, with its output also in `logs`; where it fails,
# `failed` has its name and the others go on.
failed=()
stage() {
  local name=$1 minutes=$2 began=$SECONDS
  shift 2
  mkdir -p "$logs"
  say "$name"
  if ! timeout --kill-after=30 "${minutes}m" "$@" </dev/null 2>&1 | tee "$logs/$name.log"; then
    failed+=("$name")
  fi
  echo "$name took $((SECONDS - began)) seconds"
}

# Ends the script: with status 1 where a stage has failed, and says which.
finish_stages() {
  [[ ${#failed[@]} -gt 0 ]] || exit 0
  printf 'failed: %s\n' "${failed[*]}" >&2
  exit 1
}
