namespace Proveout.Web.Pages.Trouble;

/// <summary>Something that cannot be shown: what, and what to do.</summary>
public sealed record TroubleView(string Title, string What, string Mend);
