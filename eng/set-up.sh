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
