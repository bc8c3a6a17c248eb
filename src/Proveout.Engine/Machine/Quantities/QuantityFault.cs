namespace Proveout.Engine.Machine;

/// <summary>Why a text is not the quantity it should be.</summary>
/// <param name="Rule">Identifier of the rule.</param>
/// <param name="Message">What is wrong, with the offending text in it.</param>
/// <param name="Mend">What to write instead.</param>
internal sealed record QuantityFault(string Rule, string Message, string Mend);
