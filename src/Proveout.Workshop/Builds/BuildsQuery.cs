namespace Proveout.Workshop;

/// <summary>Which part of many builds is wanted.</summary>
/// <param name="Text">Builds whose serial number, builder or machine holds this; all when empty.</param>
/// <param name="Page">Which page of them, from 1.</param>
/// <param name="CheckId">The check whose readings are wanted one by one; empty for none.</param>
/// <param name="ChecksPage">Which page of the checks, from 1.</param>
public sealed record BuildsQuery(string Text = "", int Page = 1, string CheckId = "", int ChecksPage = 1);
