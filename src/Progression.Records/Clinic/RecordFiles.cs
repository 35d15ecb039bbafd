using System.Collections.Immutable;

namespace Progression.Records.Clinic;

/// <summary>Whether the files in a folder of records are as its accounts need them.</summary>
internal static class RecordFiles
{
    private const UnixFileMode ForOwnerAndGroup = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead | UnixFileMode.GroupWrite;
    private const UnixFileMode AnyOfGroupAndOthers = (UnixFileMode)0x3F;
    private const string Drafts = "drafts";

    private static readonly ImmutableArray<string> Files = ["plans.journal", "plans.db", "plans.mark", "plans.gate", "plans.lock", "plans.journal.torn"];

    /// <summary>The condition for the files of the records.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="group">The group that every file must have, readable and writable for it; null where nobody but the owner comes in.</param>
    /// <param name="owner">The account that must own every file; null for any that comes in.</param>
    public static Condition Of(string folder, uint? group, uint? owner)
    {
        Condition asked = new(group is null
            ? "The files of the records are ordinary files of the folder's owner, with no other name elsewhere."
            : $"The files of the records are ordinary files of the group {NativeAccount.GroupName(group.Value)} with mode 0660, with no other name elsewhere.");
        return Wrong(folder, group, owner) is { } wrong ? asked with { Found = wrong.Found, Cure = wrong.Cure } : asked;
    }

    /// <summary>The condition for the folder of unsaved work: each account's own is for that account alone.</summary>
    /// <param name="folder">The folder of the records.</param>
    /// <param name="account">The account whose files are looked at; a colleague answers for theirs.</param>
    public static Condition OfDrafts(string folder, uint account)
    {
        Condition asked = new("Unsaved work can be read by the account it belongs to and by nobody else.");
        string path = Path.Combine(folder, Drafts);
        if (PathFacts.At(path, out _) is not { } drafts)
        {
            return asked;
        }

        if (!drafts.IsFolder)
        {
            return asked with { Found = $"{path} is not a folder.", Cure = $"look at it and remove it: rm {ShellWord.Of(path)}" };
        }

        bool shared = (drafts.Rights & UnixFileMode.GroupWrite) != 0;
        if ((drafts.Rights & (UnixFileMode)7) != 0 || (shared && (drafts.Rights & UnixFileMode.StickyBit) == 0))
        {
            return asked with { Found = $"The folder {path} has mode {drafts.RightsText}.", Cure = $"chmod {(shared ? "3770" : "0700")} {ShellWord.Of(path)}" };
        }

        string? open = Inside(path).FirstOrDefault(file =>
            PathFacts.At(file, out _) is { } facts && facts.Owner == account && (!facts.IsFile || (facts.Rights & AnyOfGroupAndOthers) != 0));
        return open is null ? asked : asked with { Found = $"{open} is not for its owner alone.", Cure = $"chmod 600 {ShellWord.Of(open)}" };
    }

    private static (string Found, string Cure)? Wrong(string folder, uint? group, uint? owner)
    {
        foreach (string file in Files.Select(name => Path.Combine(folder, name)))
        {
            if (PathFacts.At(file, out _) is { } facts && Wrong((file, facts), group, owner) is { } wrong)
            {
                return wrong;
            }
        }

        return null;
    }

    private static (string Found, string Cure)? Wrong((string Path, PathFacts Facts) file, uint? group, uint? owner)
    {
        string word = ShellWord.Of(file.Path);
        PathFacts facts = file.Facts;
        return facts.IsLink ? ($"{file.Path} is a symbolic link.", $"look where it leads and remove it: rm {word}")
            : !facts.IsFile ? ($"{file.Path} is not an ordinary file.", $"look at it and remove it: rm -r {word}")
            : facts.Names > 1 ? ($"{file.Path} has {facts.Names} names.", $"find the others (find / -xdev -samefile {word}) and remove them")
            : owner is uint account && facts.Owner != account ? ($"{file.Path} belongs to the account {NativeAccount.NameOf(facts.Owner)}.", $"chown {NativeAccount.NameOf(account)} {word}")
            : group is uint shared && facts.Group != shared ? ($"{file.Path} has the group {NativeAccount.GroupName(facts.Group)}.", $"chgrp {NativeAccount.GroupName(shared)} {word}")
            : group is not null && facts.Rights != ForOwnerAndGroup ? ($"{file.Path} has mode {facts.RightsText}.", $"chmod 0660 {word}")
            : null;
    }

    private static string[] Inside(string folder)
    {
        try
        {
            return Directory.GetFileSystemEntries(folder);
        }
        catch (UnauthorizedAccessException)
        {
            return [];
        }
    }
}
