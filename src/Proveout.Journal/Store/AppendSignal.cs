namespace Proveout.Journal.Store;

/// <summary>Wakes those who watch when this process has appended.</summary>
internal sealed class AppendSignal
{
    private TaskCompletionSource _next = New();

    /// <summary>Completes at the next append; take it before looking, so that none is missed.</summary>
    public Task Next => Volatile.Read(ref _next).Task;

    public void Raise() => Interlocked.Exchange(ref _next, New()).SetResult();

    private static TaskCompletionSource New() => new(TaskCreationOptions.RunContinuationsAsynchronously);
}
