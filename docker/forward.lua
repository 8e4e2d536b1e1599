-- Hands every film in the gateway on to Espalier and forgets it once Espalier has answered that it is kept. What could
-- not be handed on stays and is tried again at the next beat, so that no film is lost while the nodes are down.
function OnHeartBeat()
  for _, film in ipairs(ParseJson(RestApiGet('/instances'))) do
    local request = DumpJson({ Resources = { film }, Synchronous = true }, true)
    if RestApiPost('/dicom-web/servers/espalier/stow', request) ~= nil then
      RestApiDelete('/instances/' .. film)
    end
  end
end
