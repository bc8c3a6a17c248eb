namespace Proveout.Engine.Electrical;

/// <summary>What a fault does to the wiring network. A closed family: match on the kind.</summary>
public abstract record ElementChange
{
    /// <summary>Number of the element that is changed; null when something is added instead.</summary>
    public virtual int? ChangedElement => null;

    /// <summary>The nodes at which the wiring is changed.</summary>
    public virtual IEnumerable<int> NodesIn(WiringNetwork wiring) =>
        ChangedElement is { } element ? [wiring.Elements[element].A, wiring.Elements[element].B] : [];
}

/// <summary>An element is not there.</summary>
/// <param name="Element">Number of the element.</param>
public sealed record Cut(int Element) : ElementChange
{
    /// <inheritdoc/>
    public override int? ChangedElement => Element;
}

/// <summary>Two nodes are joined that should not be.</summary>
/// <param name="A">First node.</param>
/// <param name="B">Second node.</param>
/// <param name="LowOhms">Lowest resistance of the new contact, above zero.</param>
/// <param name="HighOhms">Highest resistance of the new contact.</param>
/// <param name="ByPlug">True when it is a plug in a wrong socket, and so only there while plugs are mated.</param>
public sealed record Join(int A, int B, double LowOhms, double HighOhms, bool ByPlug = false) : ElementChange
{
    /// <inheritdoc/>
    public override IEnumerable<int> NodesIn(WiringNetwork wiring) => [A, B];
}

/// <summary>A contact of the other sense: it conducts wherever it should not, and only there.</summary>
/// <param name="Element">Number of the element.</param>
public sealed record Invert(int Element) : ElementChange
{
    /// <inheritdoc/>
    public override int? ChangedElement => Element;
}

/// <summary>Resistance is added in series with an element.</summary>
/// <param name="Element">Number of the element.</param>
/// <param name="LowOhms">Least that is added.</param>
/// <param name="HighOhms">Most that is added.</param>
public sealed record AddInSeries(int Element, double LowOhms, double HighOhms) : ElementChange
{
    /// <inheritdoc/>
    public override int? ChangedElement => Element;
}

/// <summary>An element has another value.</summary>
/// <param name="Element">Number of the element.</param>
/// <param name="LowOhms">Its lowest resistance, above zero.</param>
/// <param name="HighOhms">Its highest resistance; infinite when it may be open.</param>
public sealed record Replace(int Element, double LowOhms, double HighOhms) : ElementChange
{
    /// <inheritdoc/>
    public override int? ChangedElement => Element;
}
