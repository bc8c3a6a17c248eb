namespace Proveout.Workshop;

/// <summary>A figure that a person types: what it is called on a page and in a command, and what it may be.</summary>
/// <param name="Name">Name of the field and of the option, lower case with hyphens.</param>
/// <param name="Label">What it is, for people.</param>
/// <param name="Unit">Its unit; empty for a bare number.</param>
/// <param name="Least">Least value that is taken.</param>
/// <param name="Most">Most that is taken.</param>
/// <param name="Hint">One sentence that helps.</param>
/// <param name="Default">Text that stands for nothing typed; empty when nothing does.</param>
/// <param name="IsWhole">True when only whole numbers make sense.</param>
public sealed record FigureField(string Name, string Label, string Unit, double Least, double Most, string Hint, string Default = "", bool IsWhole = false)
{
    /// <summary>The label with the unit.</summary>
    public string LabelWithUnit => Unit.Length > 0 ? $"{Label}, {Unit}" : Label;
}
