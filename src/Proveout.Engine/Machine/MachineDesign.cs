namespace Proveout.Engine.Machine;

/// <summary>A machine as designed: its parts and the conductors between them. Immutable; a build never changes it.</summary>
/// <param name="Name">What people call the machine.</param>
/// <param name="Summary">One or two sentences on what it is.</param>
/// <param name="Mains">The supply it is made for; null when no mains voltage enters the machine.</param>
/// <param name="Parts">Every part, in file order; designations are unique.</param>
/// <param name="Conductors">Every conductor, in file order; identifiers are unique.</param>
/// <param name="Routes">Named ways that conductors run (ducts, channels, chains), in file order.</param>
public sealed record MachineDesign(
    string Name,
    string Summary,
    MainsSupply? Mains,
    ValueList<Part> Parts,
    ValueList<Conductor> Conductors,
    ValueList<Route> Routes)
{
    /// <summary>Flat places that parts are mounted on, in file order.</summary>
    public ValueList<Surface> Surfaces { get; init; } = [];

    /// <summary>Mounting rails, in file order.</summary>
    public ValueList<Rail> Rails { get; init; } = [];

    /// <summary>Its axes, and the pulleys, belts and screws that move them.</summary>
    public MotionDesign Motion { get; init; } = MotionDesign.None;

    /// <summary>What it heats, in file order.</summary>
    public ValueList<HeatedBody> Heated { get; init; } = [];

    /// <summary>What is left for later, in the order in which it is fitted.</summary>
    public ValueList<LaterFitting> Later { get; init; } = [];

    /// <summary>Its bays and their ways of air, in file order.</summary>
    public ValueList<Bay> Bays { get; init; } = [];

    /// <summary>Kinds of mistake that are switched off, or whose probability is given anew; the others stand as they are.</summary>
    public ValueList<MistakeSetting> Mistakes { get; init; } = [];

    /// <summary>What it says to the review of its design.</summary>
    public ReviewSettings Review { get; init; } = ReviewSettings.Default;

    /// <summary>True unless a kind of mistake is switched off.</summary>
    public bool IsImagined(string kind) => Mistakes.All(setting => setting.Kind != kind || setting.Prior is not null);

    /// <summary>The probability that this machine gives anew for each mistake of a kind; null when it gives none.</summary>
    public double? PriorOf(string kind) => Mistakes.FirstOrDefault(setting => setting.Kind == kind)?.Prior;

    /// <summary>The part with a designation, or null.</summary>
    public Part? FindPart(string designation) => Index.Find(Parts, designation);

    /// <summary>The terminal that a reference names, or null when there is none.</summary>
    public Terminal? FindTerminal(TerminalReference reference) =>
        FindPart(reference.Part)?.Type.FindTerminal(reference.Terminal);

    /// <summary>Every terminal of the machine, part by part.</summary>
    public IEnumerable<TerminalReference> Terminals =>
        Parts.SelectMany(part => part.Type.Terminals.Select(terminal => new TerminalReference(part.Designation, terminal.Name)));

    // Not part of the value: all designs are equal that have equal parts, and a copy with other parts makes its own.
    private PartIndex Index { get; } = new();

    private sealed class PartIndex : IEquatable<PartIndex>
    {
        private volatile Tuple<ValueList<Part>, Dictionary<string, Part>>? _made;

        public Part? Find(ValueList<Part> parts, string designation)
        {
            var made = _made;
            if (made is null || !ReferenceEquals(made.Item1, parts))
                _made = made = Tuple.Create(parts, parts.DistinctBy(part => part.Designation).ToDictionary(part => part.Designation, StringComparer.Ordinal));
            return made.Item2.GetValueOrDefault(designation);
        }

        public bool Equals(PartIndex? other) => true;

        public override bool Equals(object? obj) => obj is PartIndex;

        public override int GetHashCode() => 0;
    }
}
