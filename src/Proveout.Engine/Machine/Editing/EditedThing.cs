namespace Proveout.Engine.Machine;

/// <summary>One thing of a machine file that people change as a whole: a part, a conductor, a route, a line of the machine's head.</summary>
/// <param name="Section">Its section, such as <c>parts</c>.</param>
/// <param name="Name">Its name there; empty when the section is one thing.</param>
public readonly record struct EditedThing(string Section, string Name)
{
    /// <summary>The section of parts.</summary>
    public const string Parts = MachineDocument.PartsKey;

    /// <summary>The section of conductors.</summary>
    public const string Conductors = MachineDocument.ConductorsKey;

    /// <summary>The section of routes.</summary>
    public const string Routes = MachineDocument.RoutesKey;

    /// <summary>The machine's head.</summary>
    public const string Head = MachineDocument.MachineKey;

    /// <inheritdoc/>
    public override string ToString() => Section switch
    {
        Parts or Conductors or Routes => $"{Section[..^1]} {Name}",
        _ => $"{Section} {Name}".TrimEnd(),
    };
}
