namespace Proveout.Engine.Electrical;

/// <summary>The current somewhere, and what takes it.</summary>
internal sealed class Flow
{
    private readonly List<Demand> _demands = [];

    /// <summary>Its sum in amperes, with everything at work.</summary>
    public double Amperes { get; private set; }

    /// <summary>What takes it.</summary>
    public IReadOnlyList<Demand> Demands => _demands;

    /// <summary>Designations of what takes it.</summary>
    public string[] Parts => [.. _demands.Select(demand => demand.Part).Distinct()];

    /// <summary>Adds a demand once, though its way there and back may touch the same place.</summary>
    public void Add(Demand demand)
    {
        if (_demands.Count > 0 && ReferenceEquals(_demands[^1], demand))
            return;
        _demands.Add(demand);
        Amperes += demand.WorstAmperes;
    }
}
