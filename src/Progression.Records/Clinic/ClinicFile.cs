using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Progression.Core.Clinic;
using Progression.Core.Entry;
using Progression.Records.Yaml;

namespace Progression.Records.Clinic;

/// <summary>The file <c>clinic.yaml</c> in the folder of the records: strict YAML. Whether it may be trusted is decided before it is read.</summary>
public static partial class ClinicFile
{
    /// <summary>Its name in the folder.</summary>
    public const string Name = "clinic.yaml";

    private const string GroupWords = "the name of a group of this machine: letters, digits, dot, dash and underscore";

    private static readonly ImmutableArray<ClinicRole> GivenRoles = [ClinicRole.Therapist, ClinicRole.Supervisor, ClinicRole.Lead];

    /// <summary>The settings of a file; null with everything wrong in it.</summary>
    /// <param name="path">What to call it.</param>
    /// <param name="bytes">What it holds.</param>
    public static (ClinicSettings? Settings, ImmutableArray<FileProblem> Problems) Read(string path, byte[] bytes)
    {
        YamlDocument document = YamlDocument.Read(path, bytes);
        if (document.Root is null)
        {
            return (null, document.Problems);
        }

        FileProblems problems = new(path);
        Fields fields = new(document.Root, "", problems);
        string? name = fields.Text("name", Need.Optional, 60);
        ClinicAccounts? accounts = fields.OneOf<ClinicAccounts>("accounts", Need.Required);
        string? group = fields.As("group", accounts == ClinicAccounts.Own ? Need.Required : Need.Optional, GroupName);
        if (accounts == ClinicAccounts.Sudo && group is not null)
        {
            fields.Refuse("group", "A group shares the folder only where each person works under their own account.", "nothing, or \"accounts: own\"", group);
        }

        ImmutableArray<(ClinicRole, string)> roles = Roles(fields.Map("roles", Need.Required));
        string? header = fields.Text("print_header", Need.Optional, 80);
        string? contact = fields.Text("print_contact", Need.Optional, 80);
        string? papers = fields.As("papers_folder", Need.Optional, Folder);
        bool syslog = fields.YesNo("syslog", Need.Optional) ?? false;
        fields.Done();
        return problems.Count > 0 ? (null, problems.InOrder())
            : (new ClinicSettings
            {
                Name = name ?? "",
                Accounts = accounts!.Value,
                Group = group,
                Roles = roles,
                Syslog = syslog,
                PrintHeader = header,
                PrintContact = contact,
                PapersFolder = papers,
            }, []);
    }

    private static Entered<string> Folder(string field, string text) => Path.IsPathRooted(text)
        ? Entered<string>.Good(text)
        : Entered<string>.Bad(new Problem(field, "This is not a whole path.", "a folder, from / on", Found.Of(text)));

    private static ImmutableArray<(ClinicRole, string)> Roles(Fields? fields)
    {
        ImmutableArray<(ClinicRole, string)> roles =
            [.. GivenRoles.SelectMany(role => fields?.Values(EnumWords.Of(role), GroupName).Select(group => (role, group)) ?? [])];
        fields?.Done();
        return roles;
    }

    private static Entered<string> GroupName(string field, string text) => GroupPattern().IsMatch(text)
        ? Entered<string>.Good(text)
        : Entered<string>.Bad(new Problem(field, "This cannot be a group.", GroupWords, Found.Of(text)));

    [GeneratedRegex(@"\A[A-Za-z_][A-Za-z0-9_.-]{0,31}\z", RegexOptions.CultureInvariant)]
    private static partial Regex GroupPattern();
}
