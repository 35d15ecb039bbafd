using System.Collections.Immutable;
using Microsoft.Win32.SafeHandles;
using Progression.Core.Clinic;
using Progression.Records.Storage;
using Progression.Records.Yaml;

namespace Progression.Records.Clinic;

/// <summary>Looks at one folder for one process, condition by condition.</summary>
internal sealed class AccessCheck(string folder, ProcessFacts process)
{
    private const UnixFileMode GroupAndOthers = (UnixFileMode)0x3F;
    private const UnixFileMode Writable = UnixFileMode.GroupWrite | UnixFileMode.OtherWrite;
    private const int NotBlocking = 0x800;

    private const UnixFileMode Shared = UnixFileMode.SetGroup | UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute
        | UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.GroupExecute;

    private readonly ImmutableArray<Condition>.Builder _conditions = ImmutableArray.CreateBuilder<Condition>();

    public bool AnyDisk { get; init; }

    private string Word => ShellWord.Of(folder);

    private string File => Path.Combine(folder, ClinicFile.Name);

    /// <summary>An answer that ends with what does not hold.</summary>
    public ClinicAccess Stop(string asked, string found, string cure)
    {
        Add(new Condition(asked, found, cure));
        return Answer(null, null);
    }

    public ClinicAccess Look()
    {
        PathFacts? facts = PathFacts.At(folder, out int error);
        if (facts is { IsLink: true })
        {
            Add(PathSafety.Of(folder, process.EffectiveUser, null));
            return new AccessCheck(Path.GetFullPath(new DirectoryInfo(folder).ResolveLinkTarget(returnFinalTarget: true)?.FullName ?? folder), process) { AnyDisk = AnyDisk }
                .After(_conditions);
        }

        if (facts is null)
        {
            return error == NativeFile.NoSuchFile ? Answer(null, Alone()) : Stop("The account can reach the folder.", $"The system does not let it come to {folder}.", Ask);
        }

        if (!facts.IsFolder)
        {
            return Stop("The records are in a folder.", $"{folder} is not a folder.", "name another with --store");
        }

        if (!AnyDisk)
        {
            Add(new Condition("The folder is on a disk of this machine, where locks and flushed writes hold."), DiskKind.UnsafeAt(folder) is { } kind
                ? ($"{folder} is on {kind}.", "move it to a disk of this machine: ext4, xfs or btrfs") : null);
        }

        PathFacts? file = PathFacts.At(File, out error);
        return file is not null ? OfClinic(facts)
            : error == NativeFile.NoSuchFile ? OfOnePerson(facts)
            : Stop("The account can enter the folder.", $"The system does not let {NativeAccount.NameOf(process.EffectiveUser)} into {folder}.", Ask);
    }

    private static string Ask => "whoever looks after the records can put the account into the group that shares the folder: usermod -aG GROUP ACCOUNT";

    private ClinicAccess After(IEnumerable<Condition> before)
    {
        _conditions.AddRange(before);
        return Look();
    }

    private ClinicAccess OfOnePerson(PathFacts facts)
    {
        uint me = process.EffectiveUser;
        Add(PathSafety.Of(folder, facts.Owner, null));
        Add(new Condition("The folder belongs to whoever works on it, or a clinic.yaml in it says who may."), facts.Owner == me ? null
            : ($"{folder} belongs to the account {NativeAccount.NameOf(facts.Owner)}.", $"work under that account, or put a clinic.yaml there, as \"progression example clinic\" prints one"));
        Add(new Condition("Nobody else can enter the folder, unless a clinic.yaml in it says who may do what."), (facts.Rights & GroupAndOthers) == 0 ? null
            : ($"{folder} has mode {facts.RightsText} and no clinic.yaml.",
                $"chmod 700 {Word} for records of one person; for a clinic: progression example clinic >clinic.yaml, put your groups in, and as root: install -m 644 clinic.yaml {Word}"));
        Add(RecordFiles.Of(folder, null, null));
        Add(RecordFiles.OfDrafts(folder, me));
        // Where a clinic's file went missing, whoever comes by sudo must not become one person with every right.
        Add(new Condition("Records without a clinic.yaml are of one person, who signed in under that account."),
            AnyDisk || me == 0 || SudoCaller.Of(process).Caller is not uint caller || caller == me ? null
                : ($"sudo started the program for {NativeAccount.NameOf(caller)}.", $"sign in as {NativeAccount.NameOf(me)}; for a clinic, put back {File}"));
        return Answer(null, facts.Owner == me ? Alone() : null);
    }

    private ClinicAccess OfClinic(PathFacts facts)
    {
        const string trusted = "clinic.yaml is an ordinary file of root or of the folder's owner, and nobody else may write it.";
        using SafeFileHandle handle = NativeFile.Open(File, NativeFile.ReadOnly | NativeFile.CloseOnExec | NativeFile.NoFollow | NotBlocking, 0, out int error);
        if (error != 0 || PathFacts.Of(handle) is not { } file)
        {
            return error == NativeFile.TooManyLinks
                ? Stop(trusted, $"{File} is a symbolic link.", $"put the file itself there: rm {ShellWord.Of(File)}")
                : Stop("clinic.yaml can be read by whoever works.", $"{File} cannot be read by {NativeAccount.NameOf(process.EffectiveUser)}.", $"chmod 644 {ShellWord.Of(File)}");
        }

        (string, string)? wrong = !file.IsFile ? ($"{File} is not an ordinary file.", $"look at it and remove it: rm -r {ShellWord.Of(File)}")
            : file.Owner != 0 && file.Owner != facts.Owner ? ($"{File} belongs to the account {NativeAccount.NameOf(file.Owner)}.", $"look at what it says, then: chown root {ShellWord.Of(File)}")
            : (file.Rights & Writable) != 0 ? ($"{File} has mode {file.RightsText}.", $"look at what it says, then: chmod 644 {ShellWord.Of(File)}")
            : null;
        Add(new Condition(trusted), wrong);
        return wrong is null ? OfClinic(facts, ClinicFile.Read(File, Bytes(handle))) : Answer(null, null);
    }

    private ClinicAccess OfClinic(PathFacts facts, (ClinicSettings? Settings, ImmutableArray<FileProblem> Problems) read)
    {
        Condition understood = new("clinic.yaml is without mistakes.");
        if (read.Settings is not { } settings)
        {
            _conditions.AddRange(read.Problems.Select(problem => understood with { Found = problem.ToString(), Cure = "mend the line; \"progression example clinic\" prints a good file" }));
            return Answer(null, null);
        }

        Add(understood);
        ImmutableArray<(ClinicRole Role, string Name, uint? Number)> groups = [.. settings.Roles.Select(one => (one.Role, one.Group, NativeAccount.Group(one.Group)))];
        Add(new Condition("The groups that clinic.yaml names are groups of this machine."),
            settings.Roles.Select(one => one.Group).Append(settings.Group).OfType<string>().FirstOrDefault(name => NativeAccount.Group(name) is null) is { } missing
                ? ($"There is no group {missing}.", $"groupadd {missing}, or mend {File}") : null);
        return settings.Accounts == ClinicAccounts.Own ? OfSharingGroup(facts, settings, groups) : OfRecordsAccount(facts, settings, groups);
    }

    private ClinicAccess OfSharingGroup(PathFacts facts, ClinicSettings settings, ImmutableArray<(ClinicRole Role, string Name, uint? Number)> groups)
    {
        uint? group = NativeAccount.Group(settings.Group!);
        Add(PathSafety.Of(folder, facts.Owner, group));
        bool isLead = groups.Any(one => one.Role == ClinicRole.Lead && one.Number is uint number && NativeAccount.GroupsOf(facts.Owner).Contains(number));
        Add(new Condition("The folder belongs to root or to a lead."), facts.Owner == 0 || isLead ? null
            : ($"{folder} belongs to the account {NativeAccount.NameOf(facts.Owner)}.", $"chown root {Word}"));
        Add(new Condition($"The folder has the group {settings.Group}, which clinic.yaml names."), facts.Group == group ? null
            : ($"{folder} has the group {NativeAccount.GroupName(facts.Group)}.", $"chgrp {settings.Group} {Word} && chmod 3770 {Word}"));
        Add(new Condition("Nobody but the owner and the group can enter the folder, and new files get its group: mode 3770 or 2770."),
            facts.Rights is Shared or (Shared | UnixFileMode.StickyBit) ? null : ($"{folder} has mode {facts.RightsText}.", $"chmod 3770 {Word}"));
        Add(RecordFiles.Of(folder, group, null));
        Add(RecordFiles.OfDrafts(folder, process.EffectiveUser));
        uint me = process.EffectiveUser;
        return Answer(settings, me == 0 ? Keeper() : new ClinicPerson($"{me}", NativeAccount.NameOf(me), Roles(groups, process.Groups)));
    }

    private ClinicAccess OfRecordsAccount(PathFacts facts, ClinicSettings settings, ImmutableArray<(ClinicRole Role, string Name, uint? Number)> groups)
    {
        string owner = NativeAccount.NameOf(facts.Owner);
        Add(PathSafety.Of(folder, facts.Owner, null));
        Add(new Condition("The folder belongs to an account of its own, which is not root."), facts.Owner != 0 ? null
            : ($"{folder} belongs to root.", $"useradd --system --shell /usr/sbin/nologin records && chown -R records: {Word}"));
        Add(new Condition("Nobody but that account can enter the folder."), (facts.Rights & GroupAndOthers) == 0 ? null
            : ($"{folder} has mode {facts.RightsText}.", $"chmod 700 {Word}"));
        Add(RecordFiles.Of(folder, null, facts.Owner));
        Add(RecordFiles.OfDrafts(folder, facts.Owner));
        Add(new Condition($"The program runs as {owner}, started through sudo."), process.EffectiveUser == facts.Owner ? null
            : ($"It runs as {NativeAccount.NameOf(process.EffectiveUser)}.", $"sudo -u {owner} progression, as docs/administrators.md sets it up"));
        (uint? caller, Condition vouched) = SudoCaller.Of(process);
        Add(vouched);
        return Answer(settings, caller is not uint person ? null : person == 0 ? Keeper()
            : new ClinicPerson($"{person}", NativeAccount.NameOf(person), Roles(groups, NativeAccount.GroupsOf(person))));
    }

    private static ImmutableArray<ClinicRole> Roles(ImmutableArray<(ClinicRole Role, string Name, uint? Number)> groups, ImmutableArray<uint> has) =>
        [.. groups.Where(one => one.Number is uint number && has.Contains(number)).Select(one => one.Role).Distinct()];

    private static ClinicPerson Keeper() => new("0", NativeAccount.NameOf(0), [ClinicRole.Keeper]);

    private ClinicPerson Alone() => ClinicPerson.Alone($"{process.EffectiveUser}", NativeAccount.NameOf(process.EffectiveUser));

    private static byte[] Bytes(SafeFileHandle file)
    {
        byte[] bytes = new byte[(int)Math.Min(RandomAccess.GetLength(file), YamlText.MostBytes + 1)];
        int read = RandomAccess.Read(file, bytes, 0);
        return bytes[..read];
    }

    private void Add(Condition asked, (string Found, string Cure)? wrong = null) =>
        _conditions.Add(wrong is { } one ? asked with { Found = one.Found, Cure = one.Cure } : asked);

    private ClinicAccess Answer(ClinicSettings? settings, ClinicPerson? person) =>
        new() { Folder = folder, Clinic = settings, Person = person, Conditions = _conditions.ToImmutable() };
}
