using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>A part or conductor as drawn, with the leads that touch it.</summary>
/// <param name="Designation">Its designation or identifier.</param>
/// <param name="Name">What it is.</param>
/// <param name="Contacts">What of it is drawn, in its order.</param>
/// <param name="LeftOutAfter">True when there are contacts after the last one drawn.</param>
/// <param name="Touches">The leads on it, red first.</param>
/// <param name="IsConductor">True for a conductor: its contacts are its two ends.</param>
internal sealed record Thing(
    string Designation,
    string Name,
    ValueList<Contact> Contacts,
    bool LeftOutAfter,
    ValueList<Touch> Touches,
    bool IsConductor)
{
    /// <summary>True when a plug of it is pulled off.</summary>
    public bool Apart => Contacts.Any(contact => contact.Apart);

    /// <summary>Names of the connectors touched.</summary>
    public string Connectors => string.Join(", ", Touches.Select(touch => Contacts[touch.Contact].Connector).Where(name => name.Length > 0).Distinct());

    /// <summary>True when a contact is one half of a joint that is apart, be there a plug to draw or not.</summary>
    public bool IsPinned(Contact contact) =>
        contact.Apart || Touches.Any(touch => touch.Side == ThingReader.Pins && Contacts[touch.Contact].Connector == contact.Connector);

    /// <summary>Designation and name in one.</summary>
    public string Label => Name.Length == 0 ? Designation : $"{Designation} {Name}";
}
