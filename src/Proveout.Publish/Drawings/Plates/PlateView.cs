using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>A plate drawn both ways.</summary>
/// <param name="Name">Short name of small letters and hyphens, unique on a page.</param>
/// <param name="Title">What it shows.</param>
/// <param name="Words">The same in a sentence or two, with the highest and the lowest place.</param>
/// <param name="Scale">What the lines stand for.</param>
/// <param name="Surface">Heights on a lattice.</param>
/// <param name="Lines">Lines of equal height.</param>
/// <param name="Marks">Where it was probed.</param>
public sealed record PlateView(string Name, string Title, string Words, string Scale, PlateSurface Surface, ValueList<PlateLine> Lines, ValueList<PlateMark> Marks);
