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
  say "building the command for $platform (a minute or two; only when its sources changed)"
  if ! log=$(dotnet publish "$root/src/Rostrum.Cli" -c Release -r "$platform" --self-contained false -p:PublishReadyToRun=true \
    -p:ArtifactsPath="$built/build" -p:RunAnalyzers=false -p:EnforceCodeStyleInBuild=false -p:GenerateDocumentationFile=false -p:DebugType=none \
    -o "$next" --nologo -v quiet 2>&1); then
    printf '%s\n' "$log" >&2
    say "the build failed"
    rm -rf "$next" "$built/stamp.$$"
    return 2
  fi
  rm -rf "$built/program"
  mv "$next" "$built/program"
  if [ -d "${dotnet%/*}/host/fxr" ]; then printf '%s\n' "${dotnet%/*}" > "$built/dotnet-root"; else : > "$built/dotnet-root"; fi
  mv "$built/stamp.$$" "$built/stamp"
  if command -v flock >/dev/null 2>&1; then exec 9>&-; fi
}
