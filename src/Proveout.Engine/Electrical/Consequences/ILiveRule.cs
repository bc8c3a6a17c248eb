using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Finds one sort of harm in one live state of a faulty machine.</summary>
internal interface ILiveRule
{
    /// <summary>The worst that it ever finds.</summary>
    Severity Worst { get; }

    /// <summary>Adds what it finds.</summary>
    void Look(LiveLook look);
}
