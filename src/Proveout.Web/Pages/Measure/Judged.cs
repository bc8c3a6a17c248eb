using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Measure;

/// <summary>What followed from a form of measurements.</summary>
/// <param name="Answer">The answer, or why there is none.</param>
/// <param name="Files">The data behind it, which goes into the record with it.</param>
internal sealed record Judged<TAnswer>(Outcome<TAnswer> Answer, IReadOnlyList<MeasuredFile> Files)
    where TAnswer : class;
