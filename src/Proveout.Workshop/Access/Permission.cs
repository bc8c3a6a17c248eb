namespace Proveout.Workshop;

/// <summary>What a page or a form asks of the person who uses it.</summary>
public enum Permission
{
    /// <summary>Nothing: the way in itself, and what carries no data of the workshop.</summary>
    Open,

    /// <summary>To be signed in.</summary>
    See,

    /// <summary>To put a signature under a record.</summary>
    Sign,

    /// <summary>To enter anything else.</summary>
    Enter,
}
