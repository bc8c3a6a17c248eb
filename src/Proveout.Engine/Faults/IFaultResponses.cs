namespace Proveout.Engine.Faults;

/// <summary>What each fault of a dictionary changes at its checks, worked out before or once it is asked for. Safe for several threads.</summary>
public interface IFaultResponses
{
    /// <summary>Number of faults.</summary>
    int Count { get; }

    /// <summary>What a fault changes.</summary>
    FaultResponse Of(int fault);

    /// <summary>What each of some faults changes; worked out side by side where it is not known.</summary>
    FaultResponse[] Of(IReadOnlyList<int> faults);

    /// <summary>Indices of the checks that surely catch a fault, rising.</summary>
    IEnumerable<int> Catching(int fault);

    /// <summary>True when a check surely catches a fault.</summary>
    bool IsCatching(int fault, int check);
}
