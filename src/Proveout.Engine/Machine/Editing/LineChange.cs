namespace Proveout.Engine.Machine;

/// <summary>Lines of a text that another text has otherwise.</summary>
/// <param name="Start">First line that goes, counted from 0.</param>
/// <param name="End">Line after the last that goes.</param>
/// <param name="Lines">Lines that come in their place.</param>
internal sealed record LineChange(int Start, int End, ValueList<string> Lines);
