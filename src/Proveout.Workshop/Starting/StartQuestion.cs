namespace Proveout.Workshop;

/// <summary>A question of the guided start: a figure to type or an answer to choose.</summary>
/// <param name="Figure">The figure; null when there is something to choose.</param>
/// <param name="Choice">What there is to choose; null when a figure is typed.</param>
public sealed record StartQuestion(FigureField? Figure, ChoiceField? Choice)
{
    /// <summary>Name of the field and of the option.</summary>
    public string Name => Figure?.Name ?? Choice!.Name;

    /// <summary>What it asks.</summary>
    public string Label => Figure?.Label ?? Choice!.Label;

    /// <summary>One sentence that helps; may be empty.</summary>
    public string Hint => Figure?.Hint ?? Choice!.Hint;

    /// <summary>Answer that stands for none given.</summary>
    public string Default => Figure?.Default ?? Choice!.Default;

    internal static StartQuestion Of(FigureField figure) => new(figure, null);

    internal static StartQuestion Of(ChoiceField choice) => new(null, choice);
}
