namespace Progression.Faults.Tests;

/// <summary>One thing a process told the kernel.</summary>
internal abstract record DiskCall
{
    /// <summary>A line on standard output: what was confirmed to somebody.</summary>
    internal sealed record Said(string Text) : DiskCall;

    /// <summary>Something that changes a file, and is only certain to be on the disk after it was flushed.</summary>
    internal abstract record Change(string File) : DiskCall;

    /// <summary>Bytes at a place.</summary>
    internal sealed record Write(string File, long Offset, byte[] Data) : Change(File);

    /// <summary>A new length.</summary>
    internal sealed record Length(string File, long Bytes) : Change(File);

    /// <summary>Everything of a file so far is on the disk.</summary>
    internal sealed record Flushed(string File) : DiskCall;
}
