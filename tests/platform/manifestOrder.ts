/**
 * The order in which Excel wants a task pane add-in's manifest; Office refuses a manifest that breaks it.
 * Only the elements a manifest like ours may use are listed.
 *
 * Source: [MS-OWEMXML] 2.2 and 2.3 (Office Web Extensibility Manifest Format), and for Runtimes
 * https://learn.microsoft.com/javascript/api/manifest/runtimes.
 */
export const manifestOrder: Readonly<Record<string, readonly string[]>> = {
  OfficeApp: [
    "Id",
    "AlternateId",
    "Version",
    "ProviderName",
    "DefaultLocale",
    "DisplayName",
    "Description",
    "IconUrl",
    "HighResolutionIconUrl",
    "SupportUrl",
    "AppDomains",
    "Hosts",
    "Requirements",
    "DefaultSettings",
    "Permissions",
    "VersionOverrides",
  ],
  Requirements: ["Sets", "Methods"],
  VersionOverrides: ["Description", "Requirements", "Hosts", "Resources"],
  Host: ["Runtimes", "AllFormFactors", "DesktopFormFactor"],
  DesktopFormFactor: ["GetStarted", "FunctionFile", "ExtensionPoint"],
  ExtensionPoint: ["Script", "Page", "Metadata", "Namespace", "OfficeTab"],
  GetStarted: ["Title", "Description", "LearnMoreUrl"],
  Group: ["Label", "Icon", "Control"],
  Control: ["Label", "Supertip", "Icon", "Action"],
  Supertip: ["Title", "Description"],
  Action: ["SourceLocation", "Title"],
  Resources: ["bt:Images", "bt:Urls", "bt:ShortStrings", "bt:LongStrings"],
};
