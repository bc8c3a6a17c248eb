namespace Proveout.Publish.Drawings;

/// <summary>Where one lead goes.</summary>
/// <param name="Lead">Which lead.</param>
/// <param name="Contact">Index of the contact that it touches, among those drawn.</param>
/// <param name="Side">Which side of a joint that is apart; empty when none is.</param>
internal sealed record Touch(Lead Lead, int Contact, string Side)
{
    /// <summary>True when the lead touches the half that is pulled off.</summary>
    public bool OnPlug => Side == ThingReader.Plug;
}
