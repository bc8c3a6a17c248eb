namespace Proveout.Engine.Machine;

/// <summary>A value as a person enters it: a text, a list of texts, or yes and no.</summary>
/// <remarks>It is put into the file as it was typed; reading the file says whether it can be.</remarks>
public sealed record EditedValue
{
    private readonly string _text = "";
    private readonly ValueList<string>? _items;
    private readonly bool _isFlag;

    private EditedValue(string text, ValueList<string>? items, bool isFlag) => (_text, _items, _isFlag) = (text, items, isFlag);

    /// <summary>A text.</summary>
    public static EditedValue Of(string text) => new(text, null, false);

    /// <summary>A list of texts.</summary>
    public static EditedValue Of(ValueList<string> items) => new("", items, false);

    /// <summary>Yes or no.</summary>
    public static EditedValue Of(bool flag) => new(flag ? "true" : "false", null, true);

    internal Node ToNode() => _items is null
        ? new ScalarNode(default, _text, plain: _isFlag)
        : new ListNode(default, [.. _items.Select(item => new ScalarNode(default, item, plain: false))]);
}
