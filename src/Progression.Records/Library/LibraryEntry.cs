using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>One entry of a library file, wherever it came from.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Fields">Its fields, which know their file and line.</param>
/// <param name="IsClinic">Whether it stands in a clinic's file.</param>
internal sealed record LibraryEntry(string Id, Fields Fields, bool IsClinic)
{
    /// <summary>Which of two entries that contradict each other is told so: the clinic's if only one is, else the later one.</summary>
    public static bool BlamesFirst(LibraryEntry first, LibraryEntry second) => first.IsClinic && !second.IsClinic;
}
