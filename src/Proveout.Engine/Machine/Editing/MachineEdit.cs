namespace Proveout.Engine.Machine;

/// <summary>One change of a machine's files, as a value: it can be kept, told, and made again on a text that has changed meanwhile.</summary>
public abstract record MachineEdit
{
    /// <summary>What it changes; two edits that change different things can both be made, in either order.</summary>
    public abstract ValueList<EditedThing> Things { get; }

    /// <summary>What it does, in a few words.</summary>
    public abstract string Words { get; }

    internal abstract EditOutcome ApplyTo(EditedFiles files);
}
