namespace Endurance.Cli.Completion;

/// <summary>What may follow an option or a command on the line.</summary>
internal enum WordKind
{
    /// <summary>Nothing: the option stands alone.</summary>
    None,

    /// <summary>Something that only the user knows, such as the name of a part.</summary>
    Free,

    /// <summary>One of a list.</summary>
    Listed,

    /// <summary>The name of a file.</summary>
    File,

    /// <summary>The name of a folder.</summary>
    Folder,
}
