namespace Proveout.Engine.Electrical;

/// <summary>Generates every fault of one kind that a machine's wiring can have.</summary>
public interface IWiringFaultRule
{
    /// <summary>The kind, lower case with hyphens.</summary>
    string Kind { get; }

    /// <summary>The kind in plain words, plural.</summary>
    string Words { get; }

    /// <summary>Probability that a careful builder makes one particular mistake of this kind in one build, 0 to 1.</summary>
    double Prior { get; }

    /// <summary>Generates the faults.</summary>
    IEnumerable<WiringFault> Generate(WiringContext context);
}
