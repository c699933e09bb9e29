using System.Runtime.InteropServices;
using System.Text;
using Rostrum.Cli;

// Ctrl-C asks the command to stop between two pieces of work; one that is deep in a single piece is left a second.
using var stop = new CancellationTokenSource();
using PosixSignalRegistration interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, signal =>
{
    signal.Cancel = true;
    stop.Cancel();
    _ = Task.Delay(TimeSpan.FromSeconds(1)).ContinueWith(_ => Environment.Exit(ExitCode.Stopped), TaskScheduler.Default);
});

var strict = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
var plain = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
using var input = new StreamReader(Console.OpenStandardInput(), strict);
var output = new StreamWriter(Console.OpenStandardOutput(), plain, bufferSize: 16 * 1024);
var talk = new StreamWriter(Console.OpenStandardError(), plain);
return RostrumCommand.Run(args, input, output, talk, !Console.IsInputRedirected, stop.Token);
