using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>Says what is left of a damaged journal, and saves it.</summary>
/// <param name="path">The damaged file; it is only read.</param>
public sealed class DamagedJournal(string path)
{
    /// <summary>What can be read and what is lost.</summary>
    public Task<RescueReport> SurveyAsync(CancellationToken cancellation) => JournalFiles.SurveyAsync(path, cancellation);

    /// <summary>Saves what can be read into a new journal.</summary>
    /// <exception cref="JournalException">The new journal cannot be written, or something is there.</exception>
    public Task<RescueReport> RescueAsync(string target, CancellationToken cancellation) => JournalFiles.RescueAsync(path, target, cancellation);
}
