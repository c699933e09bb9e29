# Sourced by ./rostrum and ./test: says what it does and can be run again.
say() { printf 'rostrum: %s\n' "$*" >&2; }
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 DOTNET_SKIP_FIRST_TIME_EXPERIENCE=1
if ! command -v dotnet >/dev/null 2>&1; then
  say "the .NET 10 SDK is needed: put 'dotnet' on the PATH, then run this again"
  return 2
fi
case "$(dotnet --version 2>/dev/null)" in
  10.*) ;;
  *) say "the .NET 10 SDK is needed; found '$(dotnet --version 2>&1 | head -n 1)'"; return 2 ;;
esac

# True where Debian's packages can be installed at all.
can_install() { [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null 2>&1; }

# Installs Debian packages. $@: their names.
install_packages() {
  { apt-get update -q && DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends "$@"; } >/dev/null 2>&1
}

# True where a C compiler is at hand to link with; installs one where Debian's packages can be installed. Without it the command works too, slower.
can_link() {
  if command -v clang >/dev/null 2>&1 || command -v gcc >/dev/null 2>&1; then return 0; fi
  can_install || return 1
  say "installing the Debian packages gcc and libc6-dev (they link the command)"
  install_packages gcc libc6-dev && command -v gcc >/dev/null 2>&1
}

# True where every program that checks our films and pages from outside is at hand.
has_film_tools() {
  local program
  for program in ffmpeg ffprobe mkvmerge mkvextract pdftotext; do command -v "$program" >/dev/null 2>&1 || return 1; done
}

# Installs the programs with which tests look at films and pages from outside. Where that cannot be, the reason goes into ROSTRUM_NO_FILM_TOOLS: only then
# are those tests skipped; where it is not set and a program is missing, they fail.
film_tools() {
  unset ROSTRUM_NO_FILM_TOOLS
  has_film_tools && return 0
  if can_install; then
    say "installing the Debian packages ffmpeg, mkvtoolnix and poppler-utils (tests read films and pages with them)"
    install_packages ffmpeg mkvtoolnix poppler-utils && has_film_tools && return 0
    export ROSTRUM_NO_FILM_TOOLS="ffmpeg, mkvtoolnix or poppler-utils is missing and could not be installed (is there a network?)"
  else
    export ROSTRUM_NO_FILM_TOOLS="ffmpeg, mkvtoolnix or poppler-utils is missing and cannot be installed from here (it takes apt-get and root)"
  fi
  return 1
}

# Builds the program for this machine. $1: the project's folder. $2: receives 'program', 'dotnet-root' and, last, 'stamp'.
# What is there already stays in use until the new program is complete.
publish_rostrum() {
  mkdir -p "$2" || return 2
  if command -v flock >/dev/null 2>&1; then
    exec 9>"$2/lock"
    flock 9
  fi
  # Absolute, because every project would take a relative path from its own folder.
  local root built next dotnet platform log
  root=$(cd "$1" && pwd -P) && built=$(cd "$2" && pwd -P) || return 2
  next="$built/next.$$"
  dotnet=$(readlink -f "$(command -v dotnet)")
  platform=$(dotnet --info | sed -n 's/^ *RID: *//p' | head -n 1)
  touch "$built/stamp.$$"
  publish() {
    rm -rf "$next"
    log=$(dotnet publish "$root/src/Rostrum.Cli" -c Release -r "$platform" "$@" -p:ArtifactsPath="$built/build" -p:RunAnalyzers=false \
      -p:EnforceCodeStyleInBuild=false -p:GenerateDocumentationFile=false -p:DebugType=none -o "$next" --nologo -v quiet 2>&1)
  }
  say "building the command for $platform (a few minutes; only when its sources changed)"
  if ! { can_link && publish --self-contained true -p:PublishAot=true; }; then
    [ -z "${log:-}" ] || printf '%s\n' "$log" | grep -m 1 -i error >&2
    say "the command cannot be compiled to machine code here, so it will start more slowly"
    if ! publish --self-contained false -p:PublishReadyToRun=true; then
      printf '%s\n' "$log" >&2
      say "the build failed"
      rm -rf "$next" "$built/stamp.$$"
      return 2
    fi
  fi
  rm -rf "$built/program"
  mv "$next" "$built/program"
  if [ -d "${dotnet%/*}/host/fxr" ]; then printf '%s\n' "${dotnet%/*}" > "$built/dotnet-root"; else : > "$built/dotnet-root"; fi
  mv "$built/stamp.$$" "$built/stamp"
  if command -v flock >/dev/null 2>&1; then exec 9>&-; fi
}
