namespace Proveout.Publish.Drawings;

/// <summary>The tag of a lead: its word in a shape, and the name of the place beside it.</summary>
/// <param name="Touch">The lead and where it goes.</param>
/// <param name="Left">Left end.</param>
/// <param name="Width">Width of word and name together.</param>
/// <param name="NameFirst">True when the name stands left of the word.</param>
internal sealed record LeadTag(Touch Touch, double Left, double Width, bool NameFirst)
{
    /// <summary>Middle of the word's shape, where the lead's line begins.</summary>
    public double WordCentre => NameFirst ? Left + Width - (LeadPainter.WordWidth(Touch) / 2) : Left + (LeadPainter.WordWidth(Touch) / 2);
}
