namespace Progression.Records.Clinic;

/// <summary>Whether the way to a folder can be changed by somebody else, who could put another folder in its place.</summary>
internal static class PathSafety
{
    private const int MostLinks = 40;
    private const UnixFileMode ForOthers = UnixFileMode.OtherWrite;

    /// <summary>The condition for a folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="trusted">The accounts that may change the way to it, beside root.</param>
    /// <param name="sharing">The group that shares the folder; null for none.</param>
    public static Condition Of(string folder, uint trusted, uint? sharing)
    {
        Condition asked = new("Only root and the owner of the records' folder may change the way to it.");
        return Wrong(Path.GetFullPath(folder), new Way(trusted, sharing)) is { } wrong ? asked with { Found = wrong.Found, Cure = wrong.Cure } : asked;
    }

    private static (string Found, string Cure)? Wrong(string path, Way way, int links = 0)
    {
        string[] names = path.Split('/', StringSplitOptions.RemoveEmptyEntries);
        string at = "/";
        for (int index = 0; index < names.Length; index++)
        {
            if (PathFacts.At(at, out _) is { } above && OfFolder(at, above, way) is { } wrong)
            {
                return wrong;
            }

            at = Path.Combine(at, names[index]);
            if (PathFacts.At(at, out _) is not { IsLink: true } link)
            {
                continue;
            }

            if (!way.Trusts(link.Owner) || links == MostLinks)
            {
                return ($"{at} is a symbolic link of the account {NativeAccount.NameOf(link.Owner)}.", $"name the folder itself, or look at the link and remove it: rm {ShellWord.Of(at)}");
            }

            string target = new FileInfo(at).LinkTarget ?? "";
            string whole = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(at) ?? "/", target, Path.Combine(names[(index + 1)..])));
            return Wrong(whole, way, links + 1);
        }

        return null;
    }

    private static (string Found, string Cure)? OfFolder(string path, PathFacts folder, Way way)
    {
        if (!way.Trusts(folder.Owner))
        {
            return ($"The folder {path} belongs to the account {NativeAccount.NameOf(folder.Owner)}.", $"chown root {ShellWord.Of(path)}");
        }

        bool byOthers = (folder.Rights & ForOthers) != 0;
        bool byGroup = (folder.Rights & UnixFileMode.GroupWrite) != 0 && way.Sharing == folder.Group;
        bool sticky = (folder.Rights & UnixFileMode.StickyBit) != 0;
        return (byOthers || byGroup) && !sticky
            ? ($"{(byOthers ? "Everybody" : $"The group {NativeAccount.GroupName(folder.Group)}")} may change the folder {path} (mode {folder.RightsText}).", $"chmod {(byOthers ? "o-w" : "g-w")} {ShellWord.Of(path)}")
            : null;
    }

    private sealed record Way(uint Owner, uint? Sharing)
    {
        public bool Trusts(uint account) => account == 0 || account == Owner;
    }
}
