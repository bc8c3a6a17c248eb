namespace Proveout.Workshop;

/// <summary>Looks whether the bench can take what is entered.</summary>
public interface IHealthDesk
{
    /// <summary>Looks now; who asks while a look is under way gets that one. It ends within some seconds, whatever the journal does.</summary>
    Task<BenchHealth> LookAsync(CancellationToken cancellation);
}
