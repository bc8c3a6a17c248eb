namespace Proveout.Workshop;

/// <summary>A measurement to keep in the record of a build.</summary>
/// <param name="Analysis">Which analysis: <c>tension</c>, <c>frame</c>, <c>level</c>, <c>motor</c>, <c>belts</c>, <c>budget</c>.</param>
/// <param name="Title">What was measured, in a few words.</param>
/// <param name="Summary">What came of it, in a sentence or two.</param>
/// <param name="Results">The figures that matter.</param>
/// <param name="Typed">What was typed, by field.</param>
/// <param name="File">The data file; null when the measurement was typed.</param>
/// <param name="Person">Who measured.</param>
/// <param name="Key">Made by the face once a form.</param>
public sealed record MeasurementRequest(
    string Analysis,
    string Title,
    string Summary,
    IReadOnlyList<KeptFigure> Results,
    IReadOnlyDictionary<string, string> Typed,
    MeasuredFile? File,
    string Person,
    Guid Key)
{
    /// <summary>Further data files, such as the hot map beside the cold one; each is kept by an entry of its own.</summary>
    public IReadOnlyList<MeasuredFile> Further { get; init; } = [];
}

/// <summary>A figure with its expanded uncertainty (coverage factor 2).</summary>
/// <param name="Name">What it is, in words.</param>
/// <param name="Value">Best estimate.</param>
/// <param name="Expanded">Expanded uncertainty; 0 when it is not known.</param>
/// <param name="Unit">Unit of both.</param>
public sealed record KeptFigure(string Name, double Value, double Expanded, string Unit);

/// <summary>A data file.</summary>
/// <param name="Name">Its name as the user gave it.</param>
/// <param name="ContentType">Media type.</param>
/// <param name="Bytes">Its content.</param>
public sealed record MeasuredFile(string Name, string ContentType, ReadOnlyMemory<byte> Bytes);
