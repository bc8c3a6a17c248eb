using System.Runtime.InteropServices;

namespace Proveout.Cli;

/// <summary>Hears what tells a server to stop: Ctrl-C, the end of its terminal, and the signal that a service is stopped with.</summary>
internal sealed class StopSignals : IDisposable
{
    private readonly TaskCompletionSource<int> _told = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly CancellationTokenSource _again = new();
    private readonly PosixSignalRegistration[] _registrations;

    public StopSignals() => _registrations = [Listen(PosixSignal.SIGINT, ExitCode.Interrupted), Listen(PosixSignal.SIGTERM, ExitCode.Fine), Listen(PosixSignal.SIGHUP, ExitCode.Fine)];

    /// <summary>Completes with the exit code once it is told to stop: to be stopped is what a service is for, to be interrupted is not.</summary>
    public Task<int> Told => _told.Task;

    /// <summary>Cancelled when it is told a second time: whoever says it twice will not wait.</summary>
    public CancellationToken Again => _again.Token;

    public void Dispose()
    {
        foreach (var registration in _registrations)
            registration.Dispose();
        _again.Dispose();
    }

    private PosixSignalRegistration Listen(PosixSignal signal, int exit) => PosixSignalRegistration.Create(signal, context =>
    {
        context.Cancel = true;
        if (!_told.TrySetResult(exit))
            _again.Cancel();
    });
}
